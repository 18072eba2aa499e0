/** Numbers of results: rows of the table, the line of a panel, sentences of cautions. */

import {restate, show} from './quantities.js';

const OUTCOMES = {stable: 'stable', unstable: 'no stable state', notSolved: 'not solved'};

/** A number, or the two ends of a held one: text, and the size that its bar shows. */
function reading(quantity, kind, units) {
  if (!quantity) {
    return null;
  }
  if (quantity.least) {
    const most = quantity.most.value;
    const ends = [quantity.least.value, most].map(end => show(end, kind, units).replace(' ', '\u00a0'));
    return ends[0] === ends[1] ? {text: ends[0], size: most} : {text: ends.join(' to '), size: most, words: true};
  }
  return {text: show(quantity.value, kind, units), size: Math.abs(quantity.value)};
}

const text = words => words && {text: words, words: true};

function fibre(stem, units) {
  const [pressed, pulled] = [stem.compressionStress, stem.tensionStress];
  const worst = pressed.value >= pulled.value ? pressed : pulled;
  return {
    ...reading(worst, 'pressure', units),
    note: `${worst === pressed ? 'pressed' : 'pulled'} at ${show(worst.at.value, 'length', units)}`,
  };
}

function mostUsed(way) {
  const check = way.checks?.[way.weakestCheck];
  if (!check) {
    return null;
  }
  const asked = check.factorAsked
    ? `factor ${Number(check.factorFound.toPrecision(3))}; ${check.askedBy} asks for ${check.factorAsked}`
    : '';
  return {text: `${check.name}: ${Number((100 * check.used).toPrecision(2))}\u00a0%`, note: asked, words: true};
}

/** Rows of one arrangement by name, in order. */
function rows(way, units) {
  const out = new Map([['State', text(OUTCOMES[way.outcome])]]);
  if (way.outcome === 'unstable') {
    out.set('Stability is lost at', text(way.ownWeightFactor < 1
      ? `${Number((100 * way.ownWeightFactor).toPrecision(3))}\u00a0% of own weight`
      : `${Number((100 * way.loadFactor).toPrecision(3))}\u00a0% of the load`));
  }
  if (way.outcome !== 'stable') {
    return out;
  }
  out.set('Load leg', reading(way.legs[0]?.tension, 'force', units));
  out.set('Tail', reading(way.tail.tension, 'force', units));
  out.set('Hand', reading(way.hand?.tension, 'force', units));
  way.contacts.forEach((contact, i) =>
    out.set(`Force on point ${i + 1}`, contact.bears ? reading(contact.forceMagnitude, 'force', units) : text('slack')));
  for (const stem of way.stems) {
    const of = way.stems.length > 1 ? `, ${stem.id}` : '';
    out.set(`Base moment${of}`, reading(stem.base.momentMagnitude, 'moment', units));
    out.set(`Fibre stress${of}`, fibre(stem, units));
    out.set(`End of stem moves${of}`, reading(stem.tip.movementMagnitude, 'length', units));
    if (stem.loadFactorToStrength) {
      out.set(`Strength reached at${of}`, text(`${Number(stem.loadFactorToStrength.toPrecision(3))}\u00a0×\u00a0load`));
    }
  }
  out.set('Stiffness left', {text: `${(100 * way.stiffnessRatio).toFixed(0)}\u00a0%`, size: way.stiffnessRatio});
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
  const contact = way?.contacts?.[index];
  if (!contact) {
    return '';
  }
  return contact.bears ? `, force ${show(contact.forceMagnitude.value, 'force', units)}` : ', slack';
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
