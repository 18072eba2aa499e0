/** Numbers of results: rows of the table, the line of a panel, sentences of cautions. */

import {restate, show} from './quantities.js';

const OUTCOMES = {stable: 'stable', unstable: 'no stable state', notSolved: 'not solved'};
const ENDS = ['run', 'rise'];
const BOTH = 'at rest: numbers from least to most of its ends, about to run and about to rise';

const figures = number => Number(number.toPrecision(3));

/** The states that an answer holds: of a held load the one about to run and the one about to rise. */
const states = way => (way.aboutToRise ? [way, way.aboutToRise] : [way]);

/** What it is at each end: said once if both say the same, else with the end. */
const atEnds = told => (told.every(words => words === told[0])
  ? told[0]
  : told.map((words, i) => `${words} about to ${ENDS[i]}`).join(', '));

/** Least and most of two texts with a unit each: the unit stands once if it is the same. */
function range(least, most) {
  const [[number, unit], [, other]] = [least, most].map(end => end.split(' '));
  return `${unit === other ? number : least.replace(' ', '\u00a0')} to ${most.replace(' ', '\u00a0')}`;
}

/** SI values at one or two ends: text, and the size that its bar shows. */
function reading(values, kind, units) {
  const sizes = values.map(Math.abs);
  const least = show(Math.min(...values), kind, units);
  const most = show(Math.max(...values), kind, units);
  return least === most
    ? {text: most, size: Math.max(...sizes)}
    : {text: range(least, most), size: Math.max(...sizes), words: true};
}

/** A tension: of a held load it has two ends in itself. */
const tension = (quantity, units) =>
  quantity && reading(quantity.least ? [quantity.least.value, quantity.most.value] : [quantity.value], 'force', units);

const text = words => words && {text: words, words: true};

/** The force on a point, and at which end of a held load there is none. */
function force(way, index, units) {
  const contacts = states(way).map(state => state.contacts[index]);
  return contacts.every(contact => contact.bears)
    ? reading(contacts.map(contact => contact.forceMagnitude.value), 'force', units)
    : text(atEnds(contacts.map(contact =>
      (contact.bears ? show(contact.forceMagnitude.value, 'force', units).replace(' ', '\u00a0') : 'slack'))));
}

function fibre(stems, units) {
  const worst = stems.map(stem => {
    const [pressed, pulled] = [stem.compressionStress, stem.tensionStress];
    return pressed.value >= pulled.value ? {...pressed, is: 'pressed'} : {...pulled, is: 'pulled'};
  });
  return {
    ...reading(worst.map(stress => stress.value), 'pressure', units),
    note: atEnds(worst.map(({is, at}) => `${is} at ${show(at.value, 'length', units)}`)),
  };
}

/** The multiple of the load at which a stated strength is reached: at each end, or at the one that has it. */
function strength(stems) {
  const times = stems.map(stem => stem.loadFactorToStrength && figures(stem.loadFactorToStrength));
  const reached = times.filter(Boolean).sort((a, b) => a - b);
  if (reached.length === 0) {
    return null;
  }
  const [least, most] = [reached[0], reached.at(-1)];
  const only = reached.length < stems.length ? ` about to ${ENDS[times.findIndex(Boolean)]}` : '';
  return text(`${least === most ? least : `${least} to ${most}`}\u00a0×\u00a0load${only}`);
}

function mostUsed(way) {
  const check = way.checks?.[way.weakestCheck];
  if (!check) {
    return null;
  }
  const asked = check.factorAsked
    ? `factor ${figures(check.factorFound)}; ${check.askedBy} asks for ${check.factorAsked}`
    : '';
  const end = {aboutToRun: 'about to run', aboutToRise: 'about to rise'}[check.end];
  return {
    text: `${check.name}: ${Number((100 * check.used).toPrecision(2))}\u00a0%`,
    note: [end, asked].filter(Boolean).join('; '),
    words: true,
  };
}

/** Rows of one arrangement by name, in order. */
function rows(way, units) {
  const out = new Map([['State', {...text(OUTCOMES[way.outcome]), note: way.aboutToRise ? BOTH : ''}]]);
  if (way.outcome === 'unstable') {
    out.set('Stability is lost at', text(way.ownWeightFactor < 1
      ? `${figures(100 * way.ownWeightFactor)}\u00a0% of own weight`
      : `${figures(100 * way.loadFactor)}\u00a0% of the load`));
  }
  if (way.outcome !== 'stable') {
    return out;
  }
  out.set('Load leg', tension(way.legs[0]?.tension, units));
  out.set('Tail', tension(way.tail.tension, units));
  out.set('Hand', tension(way.hand?.tension, units));
  way.contacts.forEach((contact, i) => out.set(`Force on point ${i + 1}`, force(way, i, units)));
  way.stems.forEach(({id}, i) => {
    const of = way.stems.length > 1 ? `, ${id}` : '';
    const stems = states(way).map(state => state.stems[i]);
    out.set(`Base moment${of}`, reading(stems.map(stem => stem.base.momentMagnitude.value), 'moment', units));
    out.set(`Fibre stress${of}`, fibre(stems, units));
    out.set(`End of stem moves${of}`, reading(stems.map(stem => stem.tip.movementMagnitude.value), 'length', units));
    out.set(`Strength reached at${of}`, strength(stems));
  });
  const left = states(way).map(state => state.stiffnessRatio);
  const [least, most] = [Math.min(...left), Math.max(...left)].map(share => (100 * share).toFixed(0));
  out.set('Stiffness left', {text: `${least === most ? least : `${least} to ${most}`}\u00a0%`, size: Math.max(...left)});
  out.set('Most used of what was checked', mostUsed(way));
  return out;
}

/** Fills the body of the table; a bar under a number is as long as it is beside the other one. */
export function fillTable(body, ways, units) {
  const sides = ways.map(way => (way ? rows(way, units) : new Map()));
  const names = [];
  for (const side of sides) {
    let at = 0;
    for (const name of side.keys()) {
      const known = names.indexOf(name);
      if (known >= 0) {
        at = known + 1;
      } else {
        names.splice(at++, 0, name);
      }
    }
  }
  body.replaceChildren(...names.filter(name => sides.some(side => side.get(name))).map(name => {
    const row = document.createElement('tr');
    const head = document.createElement('th');
    head.scope = 'row';
    head.textContent = name;
    const cells = sides.map(side => side.get(name));
    const most = Math.max(...cells.map(cell => cell?.size ?? 0));
    row.append(head, ...cells.map(cell => {
      const data = document.createElement('td');
      data.textContent = cell?.text ?? '–';
      data.classList.toggle('words', Boolean(cell?.words));
      if (cell?.note) {
        data.append(Object.assign(document.createElement('small'), {textContent: cell.note}));
      }
      if (cell?.size !== undefined && most > 0) {
        const bar = Object.assign(document.createElement('span'), {className: 'bar'});
        bar.style.width = `${100 * cell.size / most}%`;
        data.append(bar);
      }
      return data;
    }));
    return row;
  }));
}

/** Some numbers of one arrangement, to stand over its picture. */
export function headline(way, units) {
  const all = rows(way, units);
  const names = way.outcome === 'stable'
    ? ['Hand', 'Tail', 'Force on point 1', ...[...all.keys()].filter(name => /^(Base moment|End of stem)/.test(name))]
    : [...all.keys()];
  const shown = names.filter(name => all.get(name) && !(name === 'Tail' && all.get('Hand')));
  return shown.map(name => [name, all.get(name).text]);
}

/** The force on a point, as its handle tells it. */
export function pointForce(way, index, units) {
  const told = way?.contacts?.[index] ? force(way, index, units).text : '';
  return told && (told.includes('slack') ? `, ${told}` : `, force ${told}`);
}

/** Sentences of the cautions of a result. */
export function sentences(way, templates, units) {
  return way.cautions.map(caution => {
    const values = Object.entries(caution.values).map(([name, value]) => [name, restate(value, units)]);
    return values
      .reduce((sentence, [name, value]) => sentence.replaceAll(`{${name}}`, value), templates[caution.code] ?? caution.code)
      .replace(/contacts\/(\d+)/g, (all, number) => `point ${Number(number) + 1}`);
  });
}
