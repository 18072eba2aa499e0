package org.boleline.wood;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusal.Code;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.wood.Species.Entry;
import org.boleline.wood.Species.Spread;
import org.jspecify.annotations.Nullable;

/** Reads the text form of a pack; collects all refusals. Belongs to one thread. */
final class SpeciesPackReader {
  private static final String FORMAT = "species-pack/1";
  private static final int MOST_NAME = 80;

  /** A table with its columns, and the columns it cannot do without. */
  private enum Part {
    SOURCES,
    SPREADS,
    SPECIES;

    String title() {
      return "[" + name().toLowerCase(Locale.ROOT) + "]";
    }

    List<String> required() {
      return switch (this) {
        case SOURCES -> List.of("id", "reading", "title");
        case SPREADS -> List.of("column", "coefficient_of_variation", "source");
        case SPECIES -> List.of("common_name", "botanical_name", "group");
      };
    }

    List<String> columns() {
      Set<String> columns = new LinkedHashSet<>(required());
      if (this == SPECIES) {
        columns.add("other_names");
        for (SpeciesProperty property : SpeciesProperty.values()) {
          columns.add(property.column());
          columns.add(property.sourceColumn());
        }
      }
      return List.copyOf(columns);
    }
  }

  /** A row of a table: its line and its cells by column, without empty ones. */
  private record Row(int line, Map<String, String> cells) {
    String place(String column) {
      return SpeciesPackReader.place(line, column);
    }
  }

  private final List<Refusal> refusals = new ArrayList<>();
  private final Map<Part, List<Row>> tables = new EnumMap<>(Part.class);
  private final Map<String, Source> sources = new HashMap<>();
  private final Map<SpeciesProperty, Spread> spreads = new EnumMap<>(SpeciesProperty.class);

  private SpeciesPackReader() {}

  static List<Species> read(String text) {
    SpeciesPackReader reader = new SpeciesPackReader();
    List<Species> species = List.of();
    if (reader.readTables(text)) {
      reader.readSources();
      reader.readSpreads();
      species = reader.readSpecies();
    }
    if (!reader.refusals.isEmpty()) {
      throw new PlanRefusedException(reader.refusals);
    }
    return species;
  }

  private static String place(int line, String column) {
    return "/lines/" + line + "/" + column.replace("~", "~0").replace("/", "~1");
  }

  private void refuse(Code code, String place, String wants, String got) {
    refusals.add(new Refusal(code, place, wants, got));
  }

  private static String quoted(String text) {
    return "\"" + text + "\"";
  }

  // Tables

  /** Returns false if the tables are not whole, so that their cells would be refused in vain. */
  private boolean readTables(String text) {
    List<String> lines = text.lines().toList();
    String first = lines.isEmpty() ? "" : lines.get(0).strip();
    if (!(first.startsWith("\uFEFF") ? first.substring(1) : first).equals(FORMAT)) {
      refuse(Code.WRONG_FORMAT, "/lines/1", quoted(FORMAT), quoted(first));
      return false;
    }
    boolean whole = true;
    @Nullable Part part = null;
    @Nullable List<String> header = null;
    for (int i = 1; i < lines.size(); i++) {
      int line = i + 1;
      String content = lines.get(i).strip();
      if (content.isEmpty() || content.startsWith("#")) {
        continue;
      }
      if (content.startsWith("[")) {
        part = part(content, line);
        header = null;
        whole &= part != null;
        continue;
      }
      @Nullable List<String> cells = cells(content, line);
      if (part == null && whole) {
        refuse(Code.WRONG_FORMAT, "/lines/" + line, titles(), quoted(content));
        return false;
      }
      if (part == null || cells == null) {
        continue;
      }
      if (header == null) {
        header = cells;
        whole &= readHeader(part, header, line);
      } else {
        readRow(part, header, cells, line);
      }
    }
    if (!tables.containsKey(Part.SPECIES)) {
      refuse(Code.MISSING, "", "a table " + Part.SPECIES.title(), "none");
      return false;
    }
    return whole;
  }

  private static String titles() {
    List<String> titles = new ArrayList<>();
    for (Part part : Part.values()) {
      titles.add(part.title());
    }
    return "one of " + String.join(", ", titles);
  }

  private @Nullable Part part(String content, int line) {
    for (Part part : Part.values()) {
      if (content.equals(part.title())) {
        if (tables.put(part, new ArrayList<>()) != null) {
          refuse(Code.DUPLICATE, "/lines/" + line, "each table once", content);
        }
        return part;
      }
    }
    refuse(Code.UNKNOWN_MEMBER, "/lines/" + line, titles(), quoted(content));
    return null;
  }

  private boolean readHeader(Part part, List<String> header, int line) {
    int before = refusals.size();
    List<String> known = part.columns();
    Set<String> seen = new HashSet<>();
    for (String column : header) {
      if (!known.contains(column)) {
        String wants = "one of " + String.join(", ", known);
        refuse(Code.UNKNOWN_MEMBER, place(line, column), wants, quoted(column));
      } else if (!seen.add(column)) {
        refuse(Code.DUPLICATE, place(line, column), "each column once", quoted(column));
      }
    }
    for (String column : part.required()) {
      if (!seen.contains(column)) {
        refuse(Code.MISSING, place(line, column), "a column " + column, "none");
      }
    }
    return refusals.size() == before;
  }

  private void readRow(Part part, List<String> header, List<String> cells, int line) {
    if (cells.size() != header.size()) {
      String wants = header.size() + " cells, as the line of column names has";
      refuse(Code.WRONG_FORMAT, "/lines/" + line, wants, String.valueOf(cells.size()));
      return;
    }
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < cells.size(); i++) {
      if (!cells.get(i).isEmpty()) {
        row.put(header.get(i), cells.get(i));
      }
    }
    requireNonNull(tables.get(part), "table").add(new Row(line, row));
  }

  /** Splits a line at commas outside double quotes; a doubled quote within quotes is a quote. */
  private @Nullable List<String> cells(String content, int line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < content.length(); i++) {
      char c = content.charAt(i);
      if (c == '"') {
        if (quoted && i + 1 < content.length() && content.charAt(i + 1) == '"') {
          cell.append(c);
          i++;
        } else {
          quoted = !quoted;
        }
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString().strip());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    if (quoted) {
      refuse(Code.WRONG_FORMAT, "/lines/" + line, "a closing quote", "none");
      return null;
    }
    cells.add(cell.toString().strip());
    return cells;
  }

  private List<Row> rows(Part part) {
    return Objects.requireNonNullElse(tables.get(part), List.<Row>of());
  }

  private String cell(Row row, String column, String wants) {
    String text = row.cells().get(column);
    if (text == null) {
      refuse(Code.MISSING, row.place(column), wants, "nothing");
      return "";
    }
    return text;
  }

  // Rows

  private void readSources() {
    for (Row row : rows(Part.SOURCES)) {
      String id = cell(row, "id", "a short name");
      String title = cell(row, "title", "author, title, year and place");
      @Nullable Reading reading = reading(row);
      if (reading != null && sources.put(id, new Source(id, title, reading)) != null) {
        refuse(Code.DUPLICATE, row.place("id"), "each source once", quoted(id));
      }
    }
  }

  private @Nullable Reading reading(Row row) {
    Map<String, Reading> readings = new LinkedHashMap<>();
    for (Reading reading : Reading.values()) {
      readings.put(reading.name().toLowerCase(Locale.ROOT).replace('_', ' '), reading);
    }
    String wants = "one of " + String.join(", ", readings.keySet());
    String text = cell(row, "reading", wants);
    Reading reading = readings.get(text);
    if (reading == null && !text.isEmpty()) {
      refuse(Code.OUT_OF_RANGE, row.place("reading"), wants, quoted(text));
    }
    return reading;
  }

  private void readSpreads() {
    for (Row row : rows(Part.SPREADS)) {
      @Nullable SpeciesProperty property = property(row);
      @Nullable Source source = source(row, "source");
      double coefficient = coefficient(row);
      if (property != null && source != null && !Double.isNaN(coefficient)) {
        if (spreads.put(property, new Spread(coefficient, source)) != null) {
          refuse(
              Code.DUPLICATE, row.place("column"), "each column once", quoted(property.column()));
        }
      }
    }
  }

  private @Nullable SpeciesProperty property(Row row) {
    String wants = "the name of a column of figures";
    String text = cell(row, "column", wants);
    for (SpeciesProperty property : SpeciesProperty.values()) {
      if (property.column().equals(text)) {
        return property;
      }
    }
    if (!text.isEmpty()) {
      refuse(Code.UNKNOWN_REFERENCE, row.place("column"), wants, quoted(text));
    }
    return null;
  }

  private double coefficient(Row row) {
    String column = "coefficient_of_variation";
    String wants = "a number above 0 and below 1";
    String text = cell(row, column, wants);
    if (text.matches("0\\.[0-9]*[1-9][0-9]*")) {
      return Double.parseDouble(text);
    }
    if (!text.isEmpty()) {
      refuse(Code.OUT_OF_RANGE, row.place(column), wants, quoted(text));
    }
    return Double.NaN;
  }

  private @Nullable Source source(Row row, String column) {
    String wants = "the id of a source of this pack";
    String text = cell(row, column, wants);
    Source source = sources.get(text);
    if (source == null && !text.isEmpty()) {
      refuse(Code.UNKNOWN_REFERENCE, row.place(column), wants, quoted(text));
    }
    return source;
  }

  private List<Species> readSpecies() {
    List<Row> rows = rows(Part.SPECIES);
    if (rows.isEmpty() && refusals.isEmpty()) {
      refuse(Code.MISSING, "", "at least one species", "none");
    }
    List<Species> all = new ArrayList<>();
    Map<String, Integer> lineOfName = new HashMap<>();
    for (Row row : rows) {
      String commonName = name(row, "common_name");
      String botanicalName = name(row, "botanical_name");
      List<String> otherNames = otherNames(row);
      List<String> unique = new ArrayList<>(otherNames);
      unique.add(0, commonName);
      for (String name : unique) {
        Integer earlier = lineOfName.put(SpeciesPack.key(name), row.line());
        if (earlier != null && !name.isEmpty()) {
          refuse(
              Code.DUPLICATE,
              row.place(name.equals(commonName) ? "common_name" : "other_names"),
              "a name that is not used twice",
              quoted(name) + ", already in line " + earlier);
        }
      }
      WoodGroup group = group(row);
      all.add(new Species(commonName, botanicalName, otherNames, group, entries(row)));
    }
    return all;
  }

  private String name(Row row, String column) {
    String wants = "a name of 1 to " + MOST_NAME + " characters";
    String text = cell(row, column, wants);
    if (text.length() > MOST_NAME) {
      refuse(Code.OUT_OF_RANGE, row.place(column), wants, text.length() + " characters");
    }
    return text;
  }

  private static List<String> otherNames(Row row) {
    List<String> names = new ArrayList<>();
    for (String name : row.cells().getOrDefault("other_names", "").split(";", -1)) {
      if (!name.isBlank()) {
        names.add(name.strip());
      }
    }
    return names;
  }

  private WoodGroup group(Row row) {
    String wants = "hardwood or softwood";
    String text = cell(row, "group", wants);
    if (text.equals("softwood")) {
      return WoodGroup.SOFTWOOD;
    }
    if (!text.isEmpty() && !text.equals("hardwood")) {
      refuse(Code.OUT_OF_RANGE, row.place("group"), wants, quoted(text));
    }
    return WoodGroup.HARDWOOD;
  }

  private Map<SpeciesProperty, Entry> entries(Row row) {
    Map<SpeciesProperty, Entry> entries = new EnumMap<>(SpeciesProperty.class);
    Map<String, @Nullable Source> sourceOfColumn = new HashMap<>();
    for (SpeciesProperty property : SpeciesProperty.values()) {
      String text = row.cells().get(property.column());
      if (text == null) {
        continue;
      }
      String sourceColumn = property.sourceColumn();
      if (!sourceOfColumn.containsKey(sourceColumn)) {
        sourceOfColumn.put(sourceColumn, source(row, sourceColumn));
      }
      Source source = sourceOfColumn.get(sourceColumn);
      double value = property.read(text, row.place(property.column()), refusals);
      if (source != null && !Double.isNaN(value)) {
        entries.put(property, new Entry(value, text, source, spreads.get(property)));
      }
    }
    if (row.cells().containsKey(SpeciesProperty.MODULUS.column())
        && row.cells().containsKey(SpeciesProperty.APPARENT_MODULUS.column())) {
      refuse(
          Code.CONFLICT,
          row.place(SpeciesProperty.MODULUS.column()),
          "one modulus: the apparent one or the one free of shear",
          "both");
    }
    return entries;
  }
}
