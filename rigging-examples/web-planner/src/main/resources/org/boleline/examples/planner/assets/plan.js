/** What the page does to a plan: plain functions on the JSON of a plan file. */

import {si, toText} from './quantities.js';

export const HARDWARE = {
  sheave: {label: 'sheave', number: 'efficiency', usual: 0.95, name: 'Efficiency'},
  ring: {label: 'ring', number: 'friction', usual: 0.2, name: 'Friction'},
  bark: {label: 'bark', number: 'friction', usual: 0.3, name: 'Friction'},
  ideal: {label: 'no friction'},
};

export const kindOf = object => Object.keys(object)[0];

/** A plan of one arrangement alone: slow motion, no drop, what is asked of all arrangements. */
export function alone(plan, index) {
  const {drop, ...way} = plan.arrangements[index];
  const {ranges, rangeStudy, studies, notes, ...rest} = plan;
  return {...rest, arrangements: [way]};
}

/** Hardware of a kind, with the number that the same kind has elsewhere in the plan. */
function hardware(plan, kind) {
  for (const way of plan.arrangements) {
    for (const contact of way.contacts) {
      if (kindOf(contact.hardware) === kind) {
        return structuredClone(contact.hardware);
      }
    }
  }
  const {number, usual} = HARDWARE[kind];
  return {[kind]: number ? {[number]: usual} : {}};
}

/** Adds a point between the last one and the tail. */
export function addPoint(plan, index, system) {
  const way = plan.arrangements[index];
  const last = way.contacts[way.contacts.length - 1];
  const device = way.tail.device;
  const lower = device && device.stem === last.stem ? si(device.at) : 0;
  way.contacts.push({...structuredClone(last), at: toText((si(last.at) + lower) / 2, 'length', system, 0.05)});
}

/**
 * Gives a point another kind of hardware. What the old one was in a catch goes with it: it may be of another kind.
 * Returns sentences about what else of the plan went.
 */
export function changeHardware(plan, contact, kind) {
  contact.hardware = hardware(plan, kind);
  const caught = contact.hardwareInCatch !== undefined;
  delete contact.hardwareInCatch;
  return [...tidy(plan), ...(caught ? ['The hardware in a catch is as in slow motion now.'] : [])];
}

/**
 * Removes a point. What names later points by number follows them; what names the point itself goes with it.
 * Returns sentences about what else of the plan went.
 */
export function removePoint(plan, index, point) {
  plan.arrangements[index].contacts.splice(point, 1);
  return tidy(plan, {index, point});
}

/** The same place once a point was removed: a later point has a new number, that of the point itself is null. */
function follow(place, removed) {
  const found = /^(|.*\/)contacts\/(\d+)(?=\/|$)/.exec(place);
  if (!found || found[2] < removed) {
    return place;
  }
  const [all, before, number] = found;
  return Number(number) === removed ? null : `${before}contacts/${number - 1}${place.slice(all.length)}`;
}

/** What can go with an edit: one of it, and several. */
const PARTS = {
  range: ['range', 'ranges'],
  rangeStudy: ['study of ranges', 'studies of ranges'],
  correlation: ['correlation of ranges', 'correlations of ranges'],
  study: ['study', 'studies'],
  limit: ['limit of a part', 'limits of parts'],
  factor: ['factor asked', 'factors asked'],
  reading: ['reading of a study', 'readings of studies'],
};

/**
 * Leaves out what no longer fits the rest of a plan: after an edit, or once a point was removed.
 * Returns sentences about it.
 */
export function tidy(plan, removed = null) {
  const lost = new Map();
  const told = [];
  /** Those of a list that stay, as they are then; what is left of each is null if it goes. */
  const stay = (list, part, left) => list.map(left).filter(item => {
    if (item === null) {
      lost.set(part, (lost.get(part) ?? 0) + 1);
    }
    return item !== null;
  });
  const input = place => {
    const mine = removed && place.startsWith(`/arrangements/${removed.index}/contacts/`);
    const now = mine ? follow(place, removed.point) : place;
    return now !== null && resolve(plan, now) !== undefined ? now : null;
  };
  const others = plan.arrangements.filter((way, index) => index !== removed?.index).map(way => way.contacts.length);
  let stayed = false;
  let joined = false;
  /** A place of whichever arrangement has it: it stays as it is if another one has it too. */
  const shared = place => {
    const now = removed ? follow(place, removed.point) : place;
    if (now === place) {
      return place;
    }
    const number = Number(/contacts\/(\d+)/.exec(place)[1]);
    if (others.some(count => number < count)) {
      stayed ||= number <= plan.arrangements[removed.index].contacts.length;
      return place;
    }
    joined ||= now !== null && others.includes(number);
    return now;
  };

  let narrowed = 0;
  const ranges = stay(plan.ranges ?? [], 'range', range => {
    const inputs = [range.input].flat();
    const kept = inputs.map(input).filter(place => place !== null);
    if (kept.length === 0) {
      return null;
    }
    narrowed += kept.length < inputs.length ? 1 : 0;
    return {...range, input: Array.isArray(range.input) ? kept : kept[0]};
  });
  const none = plan.ranges?.length > 0 && ranges.length === 0;
  replace(plan, 'ranges', () => ranges);
  const asked = plan.rangeStudy;
  if (asked && none) {
    delete plan.rangeStudy;
    lost.set('rangeStudy', 1);
  } else if (asked) {
    const ranged = ranges.flatMap(range => range.input);
    replace(asked, 'correlations', list => stay(list, 'correlation', pair => {
      const between = pair.between.map(input);
      return between.every(place => ranged.includes(place)) ? {...pair, between} : null;
    }));
    replace(asked, 'readings', list => stay(list, 'reading', shared));
    replace(asked, 'over', list => stay(list, 'reading', item => within(item, {reading: shared(item.reading)})));
  }

  const id = removed && plan.arrangements[removed.index].id;
  replace(plan, 'studies', list => stay(list, 'study', study => {
    let reading = place => place;
    if (removed && study.arrangement === id) {
      reading = place => follow(place, removed.point);
    } else if (removed && study.kind === 'whatChanged' && [study.from, study.to].includes(id)) {
      // The points of the other arrangement keep their numbers.
      reading = place => (follow(place, removed.point) === place ? place : null);
    }
    const changes = {};
    if (study.input) {
      changes.input = input(study.input);
    }
    if (study.reading) {
      changes.reading = reading(study.reading);
    }
    if (study.readings) {
      const readings = stay(study.readings, 'reading', reading);
      changes.readings = readings.length > 0 ? readings : null;
    }
    if (study.keeps) {
      const keeps = study.keeps.map(keep => within(keep, {reading: reading(keep.reading)}));
      changes.keeps = keeps.includes(null) ? null : keeps;
    }
    for (const which of study.kind === 'forkPull' ? ['first', 'second'] : []) {
      const place = reading(`contacts/${study[which]}`);
      changes[which] = place && Number(place.split('/')[1]);
    }
    return within(study, changes);
  }));
  if (plan.limits) {
    const names = [];
    replace(plan.limits, 'parts', list => stay(list, 'limit', part => {
      const left = part.place ? within(part, {place: shared(part.place)}) : part;
      names.push(...(left ? [] : [part.name]));
      return left;
    }));
    replace(plan.limits, 'factors', list => stay(list, 'factor', factor => (names.includes(factor.for) ? null : factor)));
  }

  for (const {id: name, drop, tail} of plan.arrangements) {
    if (drop?.device?.handForce !== undefined && !tail.device) {
      drop.device = 'locked'; // A hand holds behind the wraps of a device alone.
      told.push(`The drop of “${name}” is caught with the rope made fast now: a hand needs a device.`);
    }
  }
  if (stayed) {
    told.push('Limits and readings by point number stay as they were where another arrangement has that point too.');
  }
  if (joined) {
    told.push('A limit or reading that followed its point is now of that point of another arrangement too.');
  }
  if (narrowed > 0) {
    told.unshift(`${narrowed === 1 ? '1 range has' : `${narrowed} ranges have`} fewer inputs now.`);
  }
  if (lost.size > 0) {
    const parts = [...lost].map(([part, count]) => `${count} ${PARTS[part][count === 1 ? 0 : 1]}`);
    told.unshift(`With that the plan lost ${parts.join(', ')}.`);
  }
  return told;
}

/** An object with some members changed; null if one of these went. */
const within = (object, changes) => (Object.values(changes).includes(null) ? null : {...object, ...changes});

/** Puts another list into an object that has one; none if nothing is left. */
function replace(object, name, change) {
  const list = object[name] && change(object[name]);
  if (list?.length > 0) {
    object[name] = list;
  } else {
    delete object[name];
  }
}

const steps = pointer => pointer.split('/').slice(1).map(step => step.replaceAll('~1', '/').replaceAll('~0', '~'));

/** The value at a JSON pointer; undefined if there is none. */
export const resolve = (plan, pointer) => steps(pointer).reduce((value, step) => value?.[step], plan);

/** Puts a value at a JSON pointer. */
export function put(plan, pointer, value) {
  const path = steps(pointer);
  const last = path.pop();
  path.reduce((at, step) => at[step], plan)[last] = value;
}
