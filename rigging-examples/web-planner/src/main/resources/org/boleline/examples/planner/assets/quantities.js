/** Quantities: the text form of plan files, and numbers as people read them. */

/** SI size of the units of the plan format that this page meets, by kind. */
const UNITS = {
  length: {m: 1, cm: 0.01, mm: 0.001, ft: 0.3048, in: 0.0254},
  mass: {kg: 1, g: 0.001, t: 1000, lb: 0.45359237},
  force: {N: 1, kN: 1000, lbf: 4.4482216152605},
  moment: {'N.m': 1, 'kN.m': 1000, 'lbf.ft': 4.4482216152605 * 0.3048},
  pressure: {Pa: 1, kPa: 1e3, MPa: 1e6, GPa: 1e9, psi: 4.4482216152605 / (0.0254 * 0.0254)},
};

/** The unit that each kind is shown in. */
const SHOWN = {
  metric: {length: 'm', mass: 'kg', force: 'kN', moment: 'kN.m', pressure: 'MPa'},
  us: {length: 'ft', mass: 'lb', force: 'lbf', moment: 'lbf.ft', pressure: 'psi'},
};

export const unitOf = (kind, system) => SHOWN[system][kind];

/** Text such as "11.6 m" as its number, unit, kind and SI value; null if it is no such text. */
export function parse(text) {
  const match = /^([-+]?\d+(?:\.\d+)?(?:e[-+]?\d+)?) ([A-Za-z.]+)$/i.exec(String(text));
  for (const [kind, units] of Object.entries(UNITS)) {
    if (match && match[2] in units) {
      return {number: match[1], unit: match[2], kind, si: Number(match[1]) * units[match[2]]};
    }
  }
  return null;
}

/** SI value of text; zero if it cannot be read: the server then says so. */
export const si = text => parse(text)?.si ?? 0;

const ROUNDING = 1e-9; // of steps

/** An SI value as text for a plan, in the unit that is shown, on a grid of steps of that unit, and not beyond the most. */
export function toText(value, kind, system, step, most = Infinity) {
  const size = step * unitSize(kind, system);
  const steps = Math.min(Math.round(value / size), Math.floor(most / size + ROUNDING));
  const digits = Math.max(0, Math.ceil(-Math.log10(step)));
  return `${Number((steps * step).toFixed(digits))} ${SHOWN[system][kind]}`;
}

/** The place on a grid so many steps away, forth or back, from a place on the grid or between. */
export const stepped = (value, step, count) =>
  step * (count > 0 ? Math.floor(value / step + ROUNDING) : Math.ceil(value / step - ROUNDING)) + step * count;

/** Size of one shown unit, in SI. */
export const unitSize = (kind, system) => UNITS[kind][SHOWN[system][kind]];

/** The number of text for a field of the shown unit: as it was typed, if in that unit. */
export function toField(text, kind, system) {
  const quantity = parse(text);
  if (!quantity) {
    return String(text ?? '').split(' ')[0];
  }
  const unit = SHOWN[system][kind];
  return quantity.unit === unit ? quantity.number : String(Number((quantity.si / UNITS[kind][unit]).toPrecision(5)));
}

/** A number of three figures, or more where they stand before the point. */
const figures = value => {
  const size = Math.abs(value);
  if (size === 0) {
    return '0';
  }
  return size >= 100 ? value.toFixed(0) : value.toFixed(Math.min(6, 2 - Math.floor(Math.log10(size))));
};

/** An SI value as people read it. */
export function show(value, kind, system) {
  let unit = SHOWN[system][kind];
  if (system === 'metric' && kind === 'force' && Math.abs(value) < 1000) {
    unit = 'N';
  }
  if (system === 'metric' && kind === 'length') {
    return `${value.toFixed(2)} m`;
  }
  return `${figures(value / UNITS[kind][unit])} ${unit.replace('.', '·')}`;
}

const QUANTITY = /"[^"]*"|(?<![\w.])-?\d+(?:\.\d+)?(?:E-?\d+)? [A-Za-z]+(?:\.[A-Za-z]+)*(?![\w/])/g;

/** What stands before a least bound that is told, with no other bound and nothing that is got in between. */
const LEAST = /(?:at least|above|more than|not below)(?:(?! to | at most | got ).)*$/;

/**
 * A sentence with its quantities in the units that are shown: of five figures, a least bound rounded up, all else down,
 * so that a bound that is told is within itself. What is quoted stays as it is.
 */
export function restateAll(sentence, system) {
  return system === 'metric' ? sentence : sentence.replace(QUANTITY, (found, place) => {
    const quantity = parse(found);
    if (!quantity) {
      return found;
    }
    const least = sentence.startsWith(' to ', place + found.length) || LEAST.test(sentence.slice(0, place));
    const value = quantity.si / unitSize(quantity.kind, system);
    const figure = 10 ** (4 - Math.floor(Math.log10(Math.abs(value) || 1)));
    const slack = Math.abs(value) * ROUNDING;
    const rounded = (least ? Math.ceil((value - slack) * figure) : Math.floor((value + slack) * figure)) / figure;
    return `${Number(rounded.toPrecision(5))} ${unitOf(quantity.kind, system)}`;
  });
}

/** Text with a unit, as cautions hold it, in the units that are shown; other text as it is. */
export function restate(text, system) {
  const quantity = parse(text);
  return quantity ? show(quantity.si, quantity.kind, system) : text;
}
