package org.boleline.json;

import static java.util.Objects.requireNonNull;

import org.boleline.study.Briefing;
import org.boleline.study.Found;
import org.boleline.study.PlanRecord;
import org.boleline.study.RecordLine;
import org.boleline.study.RecordSection;
import org.boleline.study.RopeLog;

/**
 * Writes records as JSON, in the format {@code rigging-record/1}. Members stand in a fixed order:
 * the same record gives the same bytes.
 */
public final class RecordWriter {
  private static final String FORMAT = "rigging-record/1";

  private RecordWriter() {}

  /**
   * Returns the record of a plan as JSON: the plan as a plan file has it, the result as a result
   * file has it, and the lines that people read.
   *
   * @param planRecord the record, not null
   * @return JSON text, a line feed at its end
   */
  public static String write(PlanRecord planRecord) {
    requireNonNull(planRecord, "planRecord");
    return JsonText.print(
        head("plan")
            .putAll("versions", planRecord.versions(), Json.Text::new)
            .put("plan", PlanWriter.plan(planRecord.checks().statics().plan()).build())
            .put("result", ResultWriter.result(planRecord.checks(), planRecord.ranges()).build())
            .putAll("sections", planRecord.sections(), RecordWriter::section)
            .build());
  }

  /**
   * Returns a briefing as JSON.
   *
   * @param briefing the briefing, not null
   * @return JSON text, a line feed at its end
   */
  public static String write(Briefing briefing) {
    requireNonNull(briefing, "briefing");
    return JsonText.print(head("briefing").put("section", section(briefing.section())).build());
  }

  /**
   * Returns the log of a rope as JSON.
   *
   * @param log the log, not null
   * @return JSON text, a line feed at its end
   */
  public static String write(RopeLog log) {
    requireNonNull(log, "log");
    ObjectBuilder object = head("ropeLog").putAll("pulls", log.pulls(), RecordWriter::pull);
    put(object, "damage", log.damage());
    return JsonText.print(object.put("section", section(log.section())).build());
  }

  private static ObjectBuilder head(String record) {
    return new ObjectBuilder()
        .put("format", FORMAT)
        .put(
            "library",
            new ObjectBuilder()
                .put("name", "Boleline")
                .put("version", ResultWriter.libraryVersion()))
        .put("record", record);
  }

  private static Json pull(RopeLog.Pull pull) {
    ObjectBuilder object = new ObjectBuilder().put("cut", pull.cut()).put("state", pull.state());
    put(object, "peak", pull.peak());
    put(object, "strengthShare", pull.strengthShare());
    return object.build();
  }

  /** A figure, or under another name why there is none. */
  private static void put(ObjectBuilder object, String name, Found found) {
    found.figure().ifPresent(figure -> object.put(name, RangesWriting.value(figure)));
    found.reason().ifPresent(reason -> object.put("no" + capital(name), reason));
  }

  private static String capital(String name) {
    return Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }

  private static Json section(RecordSection section) {
    return new ObjectBuilder()
        .put("title", section.title())
        .putAll("lines", section.lines(), RecordWriter::line)
        .build();
  }

  private static Json line(RecordLine line) {
    return new ObjectBuilder().put("label", line.label()).put("text", line.text()).build();
  }
}
