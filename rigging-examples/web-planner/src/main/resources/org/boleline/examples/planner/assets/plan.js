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
export function hardware(plan, kind) {
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

/** Removes a point, and ranges that name points of this arrangement by number. */
export function removePoint(plan, index, point) {
  plan.arrangements[index].contacts.splice(point, 1);
  return dropRanges(plan, input => input.startsWith(`/arrangements/${index}/contacts/`));
}

/** Removes ranges of inputs that no longer stand in the plan; how many. */
export const tidyRanges = plan => dropRanges(plan, input => resolve(plan, input) === undefined);

function dropRanges(plan, isGone) {
  let count = 0;
  for (const range of plan.ranges ?? []) {
    const inputs = [range.input].flat();
    const kept = inputs.filter(input => !isGone(input));
    count += inputs.length - kept.length;
    range.input = kept.length === 1 ? kept[0] : kept;
  }
  if (plan.ranges) {
    plan.ranges = plan.ranges.filter(range => range.input.length > 0);
    if (plan.ranges.length === 0) {
      delete plan.ranges;
      delete plan.rangeStudy;
    }
  }
  return count;
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
