/** The page: a plan, two arrangements of it side by side, and what a person does to them. */

import {fillTable, headline, pointForce, sentences} from './numbers.js';
import {Picture} from './picture.js';
import {HARDWARE, addPoint, alone, changeHardware, kindOf, put, removePoint, resolve, tidy} from './plan.js';
import {restateAll, show, si, toField, toText, unitOf, unitSize} from './quantities.js';
import {load, solve, view} from './server.js';

const MOTIONS = ['lowering', 'raising', 'held'];
const GRID = 0.05;
const FINE = 0.001;
const UNMOVED = 1e-9;
const STEP = 0.1;
const LONGEST_ARROW = 90;
const PATIENCE = 400; // milliseconds
const SCROLL_BAR = 20; // pixels, about
const NAMES = ['A', 'B'];

const $ = selector => document.querySelector(selector);
const dark = matchMedia('(prefers-color-scheme: dark)');
const state = {plan: null, units: 'metric', templates: {}, panels: [], fileName: 'plan.json'};

function make(name, properties = {}, ...children) {
  const {data = {}, ...rest} = properties;
  const node = Object.assign(document.createElement(name), rest);
  Object.assign(node.dataset, data);
  node.append(...children);
  return node;
}

const option = (value, label, chosen) => make('option', {value, textContent: label, selected: value === chosen});

function select(label, key, options, chosen, changed) {
  const box = make('select', {data: {key}}, ...options.map(([value, name]) => option(value, name, chosen)));
  box.addEventListener('change', () => changed(box.value));
  return make('label', {className: 'field'}, label, box);
}

/** A field for the value at a pointer of the plan; of a plain number if it has no kind. */
function field(label, pointer, kind, changed) {
  const input = make('input', {type: 'text', inputMode: 'decimal', autocomplete: 'off', data: {pointer, kind: kind ?? ''}});
  input.addEventListener('input', () => {
    fit(input);
    const typed = input.value.trim();
    const number = typed !== '' && Number.isFinite(Number(typed)) ? Number(typed) : typed;
    put(state.plan, pointer, kind ? `${typed} ${unitOf(kind, state.units)}` : number);
    changed();
  });
  const unit = kind ? [make('span', {className: 'unit', textContent: unitOf(kind, state.units)})] : [];
  return make('label', {className: 'field'}, label, make('span', {className: 'with-unit'}, input, ...unit));
}

/** Makes a field as wide as what stands in it. */
const fit = input => input.style.setProperty('--figures', input.value.length);

/** Writes the plan's values into all fields but the one that is typed in. */
function fillFields() {
  for (const input of document.querySelectorAll('input[data-pointer]')) {
    if (input !== document.activeElement) {
      const value = resolve(state.plan, input.dataset.pointer);
      input.value = input.dataset.kind ? toField(value, input.dataset.kind, state.units) : String(value ?? '');
      fit(input);
    }
  }
}

function notice(words, className = '') {
  const lines = [words].flat().filter(Boolean);
  $('#notice').replaceChildren(...lines.map(line => make('p', {textContent: line, className})));
}

/** The place of a refusal in the whole plan, for a request that held one arrangement. */
function placeIn(error, way) {
  const pointer = decodeURIComponent((error.pointer ?? '#').slice(1));
  return pointer.replace(/^\/arrangements\/0(?=\/|$)/, `/arrangements/${way}`);
}

const problemLines = problem =>
  (problem.errors ?? []).map(error => `${decodeURIComponent(error.pointer.slice(1)) || '/'}: ${restateAll(error.detail, state.units)}`);

/** One arrangement: its choice, picture, fields, numbers. */
class Panel {
  constructor(root, index) {
    this.root = root;
    this.index = index;
    this.result = null;
    this.errors = [];
    this.failure = '';
    this.changedAt = null;
    root.append($('#panel').content.cloneNode(true));
    root.querySelector('h2').textContent = NAMES[index];
    this.room = root.querySelector('.picture');
    this.drawnFor = 0;
    this.picture = new Picture(this.room, `Points of ${NAMES[index]}`);
    root.querySelector('.way').addEventListener('change', event => this.choose(Number(event.target.value)));
  }

  get arrangement() {
    return state.plan.arrangements[this.way];
  }

  get pointer() {
    return `/arrangements/${this.way}`;
  }

  /** Whether the last answer was a refusal or a failure: the result is then of an older state. */
  get refused() {
    return this.errors.length > 0 || Boolean(this.failure);
  }

  choose(way) {
    this.turnTo(way);
    this.rebuild();
    update(this);
  }

  /** Shows another arrangement; what is still there of the last one is not to be seen with its name. */
  turnTo(way) {
    this.way = way;
    this.result = null;
    this.room.classList.add('other');
    this.root.querySelector('.headline').replaceChildren();
    this.root.querySelector('.cautions').replaceChildren();
  }

  /** Makes choices and fields anew: after a change of what there is. The focus stays where it was. */
  rebuild() {
    const focused = this.root.contains(document.activeElement) && document.activeElement.dataset.key;
    this.root.querySelector('.way').replaceChildren(
      ...state.plan.arrangements.map((way, i) => option(String(i), way.id, String(this.way))));
    const motion = this.root.querySelector('.motion');
    motion.replaceChildren(motion.firstElementChild, ...MOTIONS.map(name => {
      const input = make('input', {type: 'radio', name: `motion-${this.index}`, value: name, checked: this.arrangement.motion === name});
      input.addEventListener('change', () => {
        this.arrangement.motion = name;
        const panels = sharing(this.way);
        panels.filter(panel => panel !== this).forEach(panel => panel.rebuild());
        update(...panels);
      });
      return make('label', {}, input, make('span', {textContent: name}));
    }));
    const controls = this.root.querySelector('.controls');
    controls.replaceChildren(...this.arrangement.contacts.map((contact, i) => this.point(contact, i)), this.adder(), this.tail());
    fillFields();
    if (focused) {
      this.focus(focused);
    }
  }

  /** Puts the focus on the first of these controls that there is and that can be used. */
  focus(...keys) {
    keys.map(key => this.root.querySelector(`[data-key="${key}"]`)).find(control => control && !control.disabled)?.focus();
  }

  /** After a change of what there is: this panel, and the other if it shows the same. */
  restructure(told = tidy(state.plan)) {
    notice(told);
    const panels = sharing(this.way);
    panels.forEach(panel => panel.rebuild());
    update(...panels);
  }

  stemChoice(holder, key) {
    const ids = state.plan.stems.map(stem => stem.id);
    return ids.length < 2 ? [] : [select('Stem', key, ids.map(id => [id, id]), holder.stem, id => {
      holder.stem = id;
      this.restructure();
    })];
  }

  /** Removes a point; the focus goes to the one that takes its place. */
  remove(i) {
    this.restructure(removePoint(state.plan, this.way, i));
    const at = Math.min(i, this.arrangement.contacts.length - 1);
    this.focus(`remove-${at}`, `hardware-${at}`);
  }

  point(contact, i) {
    const changed = () => update(...sharing(this.way));
    const kind = kindOf(contact.hardware);
    const pointer = `${this.pointer}/contacts/${i}`;
    const {number, name} = HARDWARE[kind];
    const choice = select('Hardware', `hardware-${i}`, Object.entries(HARDWARE).map(([key, {label}]) => [key, label]), kind, value => {
      this.restructure(changeHardware(state.plan, contact, value));
    });
    const remove = make('button', {type: 'button', className: 'small', textContent: '✕', title: `Remove point ${i + 1}`,
      disabled: this.arrangement.contacts.length < 2, data: {key: `remove-${i}`}});
    remove.setAttribute('aria-label', `Remove point ${i + 1}`);
    remove.addEventListener('click', () => this.remove(i));
    return make('fieldset', {},
      make('legend', {textContent: `Point ${i + 1}`}),
      remove,
      ...this.stemChoice(contact, `stem-${i}`),
      field('At', `${pointer}/at`, 'length', changed),
      choice,
      ...(number ? [field(name, `${pointer}/hardware/${kind}/${number}`, null, changed)] : []),
      ...(contact.sling === undefined ? [] : [field('Sling', `${pointer}/sling`, 'length', changed)]));
  }

  adder() {
    const button = make('button', {type: 'button', textContent: 'Add a point', data: {key: 'add'}});
    button.addEventListener('click', () => {
      addPoint(state.plan, this.way, state.units);
      this.restructure();
    });
    return make('div', {}, button);
  }

  tail() {
    const changed = () => update(...sharing(this.way));
    const {tail} = this.arrangement;
    const kind = kindOf(tail);
    const choice = select('Goes', 'tail', [['device', 'to a device'], ['point', 'to a place'], ['direction', 'straight down']], kind, value => {
      this.arrangement.tail = this.otherTail(value);
      this.restructure();
    });
    const pointer = `${this.pointer}/tail`;
    const fields = {
      device: () => [...this.stemChoice(tail.device, 'stem-tail'),
        field('At', `${pointer}/device/at`, 'length', changed),
        field('Wraps', `${pointer}/device/wraps`, null, changed),
        field('Friction', `${pointer}/device/friction`, null, changed)],
      point: () => ['x', 'y', 'z'].map((axis, d) => field(axis, `${pointer}/point/${d}`, 'length', changed)),
      direction: () => [],
    };
    return make('fieldset', {className: 'tail'}, make('legend', {textContent: 'Tail'}), choice, ...fields[kind]());
  }

  /** Another tail: the one that an arrangement of the plan has, or one to begin with. */
  otherTail(kind) {
    const known = state.plan.arrangements.map(way => way.tail).find(tail => kindOf(tail) === kind);
    const last = this.arrangement.contacts.at(-1);
    const place = this.result?.contacts?.at(-1)?.position;
    const begin = {
      direction: () => ({direction: 'down'}),
      device: () => ({device: {stem: last.stem, at: '1 m', friction: 0.2, wraps: 2}}),
      point: () => ({point: [place?.x ?? 0, place?.y ?? 0, 0].map(x => toText(x, 'length', state.units, GRID))}),
    };
    return known ? structuredClone(known) : begin[kind]();
  }

  /** What can be dragged. */
  handles() {
    const {contacts, tail} = this.arrangement;
    const along = (place, label, holder, pointer, more) => {
      const station = si(holder.at);
      const end = this.picture.end(holder.stem);
      return {
        place, label, station, stem: holder.stem,
        text: show(station, 'length', state.units) + more,
        now: station, least: 0, most: end,
        moveTo: to => this.moved(pointer, [toText(Math.max(0, to), 'length', state.units, GRID, end)]),
      };
    };
    const out = contacts.map((contact, i) => along(`contacts/${i}`, `Point ${i + 1}`, contact,
      [`${this.pointer}/contacts/${i}/at`], this.refused ? '' : pointForce(this.result, i, state.units)));
    if (tail.device) {
      out.push(along('device', 'Device', tail.device, [`${this.pointer}/tail/device/at`], ''));
    } else if (tail.point) {
      out.push(this.freeTail(tail.point));
    }
    return out.filter(handle => !handle.stem || this.picture.end(handle.stem) !== null);
  }

  /** The end of the rope, which moves in the plane of the picture. */
  freeTail(point) {
    const [x, y, z] = point.map(si);
    const {azimuth} = this.picture;
    const [cos, sin] = [Math.cos(azimuth), Math.sin(azimuth)];
    const out = x * cos + y * sin;
    const aside = y * cos - x * sin;
    const grid = GRID * unitSize('length', state.units);
    const toPlan = (along, up) => this.moved([0, 1, 2].map(d => `${this.pointer}/tail/point/${d}`),
      [along * cos - aside * sin, along * sin + aside * cos, up].map((value, d) =>
        (Math.abs(value - si(point[d])) < UNMOVED ? point[d] : toText(value, 'length', state.units, FINE))));
    return {
      place: 'tail', label: 'Tail', now: out, least: -100, most: 100,
      text: `${show(out, 'length', state.units)} along, ${show(z, 'length', state.units)} up`,
      along: out, up: z,
      put: toPlan,
      letGo: () => this.lay(),
      drag: (along, up) => toPlan(grid * Math.round(along / grid), grid * Math.round(up / grid)),
    };
  }

  moved(pointers, texts) {
    if (pointers.every((pointer, i) => resolve(state.plan, pointer) === texts[i])) {
      return;
    }
    pointers.forEach((pointer, i) => put(state.plan, pointer, texts[i]));
    fillFields();
    this.lay();
    update(...sharing(this.way));
  }

  lay() {
    const place = this.picture.handles(this.handles(), STEP * unitSize('length', state.units));
    if (place) {
      this.root.querySelector(`[data-pointer^="${this.pointer}/${place === 'device' ? 'tail/device/at' : place}"]`)?.focus();
    }
  }

  /** The force to one metre of arrow that gives the greatest arrow some length on the sheet. */
  wantedForceScale() {
    const forces = this.result?.outcome === 'stable' ? this.result.contacts.map(contact => contact.forceMagnitude.value) : [];
    return Math.max(0, ...forces) * this.picture.scale / LONGEST_ARROW;
  }

  /** Asks the server for numbers and picture of the plan as it stands. */
  async refresh() {
    const begun = this.changedAt;
    this.changedAt = null;
    const plan = alone(state.plan, this.way);
    const {way} = this;
    this.drawnFor = this.room.clientWidth;
    const width = Math.max(320, Math.min(900, this.drawnFor));
    const height = Math.round(Math.max(460, Math.min(1.6 * width, innerHeight - 190)));
    const wishes = {arrangement: plan.arrangements[0].id, id: this.index, width, height,
      theme: dark.matches ? 'dark' : 'light', units: state.units,
      ...(state.forceScale ? {newtonsPerMetre: state.forceScale} : {})};
    const {value, problem} = await view(plan, wishes);
    if (way !== this.way) {
      return;
    }
    this.root.classList.toggle('stale', Boolean(problem));
    this.errors = problem?.errors?.map(error => ({place: placeIn(error, way), detail: restateAll(error.detail, state.units)})) ?? [];
    this.failure = problem && !problem.errors ? `${problem.title}. ${problem.detail}` : '';
    if (!problem) {
      [this.result] = value.result.arrangements;
      this.room.classList.remove('other');
      this.picture.show(value.picture);
      this.numbers();
    }
    this.lay();
    if (begun !== null && !problem) {
      requestAnimationFrame(() => performance.measure('change to picture', {start: begun, end: performance.now()}));
    }
  }

  numbers() {
    const line = this.root.querySelector('.headline');
    line.replaceChildren(...headline(this.result, state.units).map(([name, value]) =>
      make('span', {}, `${name} `, make('b', {textContent: value}))));
    this.root.querySelector('.cautions').replaceChildren(
      ...sentences(this.result, state.templates, state.units).map(textContent => make('li', {textContent})));
  }
}

const sharing = way => state.panels.filter(panel => panel.way === way);

/** Tells refusals at their fields; those without a field, in their panel. */
function tellErrors() {
  document.querySelectorAll('.error').forEach(node => node.remove());
  const inputs = [...document.querySelectorAll('input[data-pointer]')];
  for (const input of inputs) {
    input.removeAttribute('aria-invalid');
    input.removeAttribute('aria-describedby');
  }
  const told = new Set();
  for (const panel of state.panels) {
    const rest = panel.failure ? [panel.failure] : [];
    for (const {place, detail} of panel.errors) {
      const at = inputs.filter(input => place === input.dataset.pointer || input.dataset.pointer.startsWith(`${place}/`)
        || place.startsWith(`${input.dataset.pointer}/`));
      const mine = at.find(input => panel.root.contains(input)) ?? at.find(input => input.closest('header'));
      if (!mine) {
        rest.push(`${place || '/'}: ${detail}`);
      } else if (!told.has(mine)) {
        told.add(mine);
        const id = `error-${told.size}`;
        mine.setAttribute('aria-invalid', 'true');
        mine.setAttribute('aria-describedby', id);
        mine.closest('fieldset').append(make('p', {id, className: 'error', textContent: detail}));
      }
    }
    panel.root.querySelector('.problems').replaceChildren(...rest.map(textContent => make('li', {textContent})));
  }
}

/** Marks a part of the page while it waits for the server: for all to see once that takes its time. */
async function busy(root, work) {
  root.setAttribute('aria-busy', 'true');
  const timer = setTimeout(() => root.classList.add('slow'), PATIENCE);
  try {
    await work;
  } finally {
    clearTimeout(timer);
    root.classList.remove('slow');
    root.removeAttribute('aria-busy');
  }
}

const waiting = new Set();
let working = false;

/** Notes that panels have changed. One round of requests is under way at most; the newest state wins. */
function update(...panels) {
  for (const panel of panels) {
    panel.changedAt ??= performance.now();
    waiting.add(panel);
  }
  if (!working) {
    working = true;
    requestAnimationFrame(work);
  }
}

/** Arrows of both pictures are to one scale, so that they compare; it changes in steps of 1, 2, 5. */
function shareForceScale() {
  const wanted = Math.max(...state.panels.map(panel => panel.wantedForceScale()));
  if (wanted > 0) {
    const ten = 10 ** Math.floor(Math.log10(wanted));
    const scale = Math.max(1, [1, 2, 5, 10].find(step => step * ten >= 0.999 * wanted) * ten);
    if (scale !== state.forceScale) {
      state.forceScale = scale;
      state.panels.forEach(panel => waiting.add(panel));
    }
  }
}

async function work() {
  try {
    while (waiting.size > 0) {
      const panels = [...waiting];
      waiting.clear();
      await busy($('.numbers'), Promise.all(panels.map(panel => busy(panel.root, panel.refresh()))));
      fillTable($('.numbers tbody'), state.panels.map(panel => (panel.refused ? null : panel.result)), state.units);
      tellErrors();
      shareForceScale();
    }
  } finally {
    working = false;
  }
}

/** Shows another plan. */
function begin(plan) {
  state.plan = plan;
  $('#title').textContent = plan.title ?? '';
  const count = plan.arrangements.length;
  const first = count > 3 ? 2 : 0;
  state.panels.forEach((panel, i) => panel.turnTo(Math.min(first + i, count - 1)));
  $('.numbers tbody').replaceChildren();
  rebuildAll();
}

function rebuildAll() {
  const {piece} = state.plan;
  const changed = () => update(...state.panels);
  $('#piece').replaceChildren($('#piece').firstElementChild, ...(piece.log
    ? [field('Length', '/piece/log/length', 'length', changed),
      field('Large end', '/piece/log/largeEnd', 'length', changed),
      field('Small end', '/piece/log/smallEnd', 'length', changed)]
    : [field('Mass', '/piece/mass', 'mass', changed)]));
  state.panels.forEach(panel => panel.rebuild());
  update(...state.panels);
}

let opening = 0;

async function open(file) {
  opening++;
  const turn = opening;
  notice(`Opening ${file.name} …`, 'done');
  const text = await file.text();
  const answer = await solve(text);
  if (turn !== opening) {
    return; // another one was chosen meanwhile
  }
  if (answer.problem) {
    notice([`${file.name} was not opened. ${answer.problem.title}. ${answer.problem.detail ?? ''}`, ...problemLines(answer.problem)]);
    return;
  }
  state.fileName = file.name;
  notice(`${file.name} is open.`, 'done');
  begin(JSON.parse(text.replace(/^\uFEFF/, '')));
}

async function save() {
  const text = `${JSON.stringify(state.plan, null, 2)}\n`;
  const url = URL.createObjectURL(new Blob([text], {type: 'application/json'}));
  make('a', {href: url, download: state.fileName}).click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
  const {problem} = await solve(text);
  if (problem) {
    notice([`${state.fileName} was saved. The server would not open it again: ${problem.title}.`, ...problemLines(problem)]);
  } else {
    notice(`${state.fileName} was saved.`, 'done');
  }
}

$('#open').addEventListener('click', () => $('#file').click());
$('#file').addEventListener('change', async event => {
  const [file] = event.target.files;
  event.target.value = '';
  if (file) {
    await open(file);
  }
});
$('#save').addEventListener('click', save);
$('#units').addEventListener('change', event => {
  state.units = event.target.value;
  rebuildAll();
});
dark.addEventListener('change', () => update(...state.panels));

state.panels = [...document.querySelectorAll('.panel')].map((root, i) => new Panel(root, i));
state.fileName = 'hornbeam.json';
const [plan, templates] = await Promise.all([load('demo.json'), load('cautions.json')]);
state.templates = templates;
begin(plan);
// A picture that was drawn for another width is drawn anew; one that gave way to a scroll bar is not.
const watch = new ResizeObserver(() =>
  update(...state.panels.filter(({room, drawnFor}) => Math.abs(room.clientWidth - drawnFor) > SCROLL_BAR)));
state.panels.forEach(({room}) => watch.observe(room));
