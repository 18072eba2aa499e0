/** The server's picture, with handles laid over it: for pointers and for keys. */

import {stepped} from './quantities.js';

const SVG = 'http://www.w3.org/2000/svg';

const element = (name, attributes, parent) => {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) {
    made.setAttribute(key, value);
  }
  parent?.append(made);
  return made;
};

/** The axes of loaded stems, seen from the side: places on the sheet and their stations. */
function axes(side) {
  const found = {};
  for (const path of side.querySelectorAll('.axis-loaded')) {
    const stations = path.dataset.stations.split(' ').map(Number);
    const places = path.getAttribute('d').slice(1).split(' L').map(pair => pair.split(' ').map(Number));
    found[path.dataset.stem] = {stations, places};
  }
  return found;
}

/** The station whose place is nearest. */
function nearest({stations, places}, [x, y]) {
  let best = {distance: Infinity, station: 0};
  for (let i = 1; i < places.length; i++) {
    const [ax, ay] = places[i - 1];
    const [dx, dy] = [places[i][0] - ax, places[i][1] - ay];
    const size = dx * dx + dy * dy;
    const t = size === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / size));
    const distance = Math.hypot(x - ax - t * dx, y - ay - t * dy);
    if (distance < best.distance) {
      best = {distance, station: stations[i - 1] + t * (stations[i] - stations[i - 1])};
    }
  }
  return best.station;
}

/** The place of a station on the sheet. */
function placeOf({stations, places}, station) {
  let i = 1;
  while (i < stations.length - 1 && stations[i] < station) {
    i++;
  }
  const span = stations[i] - stations[i - 1];
  const t = span === 0 ? 0 : (station - stations[i - 1]) / span;
  return [0, 1].map(d => places[i - 1][d] + t * (places[i][d] - places[i - 1][d]));
}

export class Picture {
  #room;
  #overlay;
  #handles = new Map();
  #side = null;
  /** Where the side view stood when a free end was taken up: there it stays until that is let go. */
  #held = null;

  constructor(room, label) {
    this.#room = room;
    this.#overlay = element('svg', {class: 'handles', role: 'group', 'aria-label': label});
    room.append(this.#overlay);
  }

  /** Shows a picture; the handles stay, so that a drag and the focus outlive it. */
  show(text) {
    const drawn = document.importNode(new DOMParser().parseFromString(text, 'image/svg+xml').documentElement, true);
    const old = this.#room.querySelector(':scope > svg:not(.handles)');
    if (old) {
      old.replaceWith(drawn);
    } else {
      this.#room.prepend(drawn);
    }
    this.#overlay.setAttribute('viewBox', drawn.getAttribute('viewBox'));
    const view = drawn.querySelector('.view-side');
    this.#side = view && {
      scale: Number(view.dataset.scale),
      left: Number(view.dataset.left),
      top: Number(view.dataset.top),
      azimuth: Number(view.dataset.azimuth) * Math.PI / 180,
      axes: axes(view),
      view,
    };
    this.#place();
  }

  /** Lays the drawing so that the side view stays where it is held. */
  #place() {
    const drawn = this.#room.querySelector(':scope > svg:not(.handles)');
    if (this.#held && this.#side) {
      const {scale} = this.#shown();
      const [x, y] = this.#toShown([0, 0]).map(value => value / this.#overlay.viewBox.baseVal.width * this.#room.clientWidth);
      drawn.style.transform = `translate(${x}px, ${y}px) scale(${scale})`;
    } else {
      drawn?.style.removeProperty('transform');
    }
  }

  /** How a sheet is shown: larger or smaller, and moved aside, while a free end is dragged. */
  #shown() {
    const {scale, left, top} = this.#side;
    const held = this.#held ?? this.#side;
    const ratio = held.scale / scale;
    return {scale: ratio, right: held.left - ratio * left, down: held.top - ratio * top};
  }

  #toShown([x, y]) {
    const {scale, right, down} = this.#shown();
    return [scale * x + right, scale * y + down];
  }

  /**
   * Lays handles over the picture. Each has {place, label, text, station, stem, moveTo(station)} if it runs
   * along a stem, or {place, label, text, along, up, put(along, up), drag(along, up),
   * letGo()} if it is free in the plane. Returns the place of a handle that went with the focus of the keys in it.
   */
  handles(wanted, step) {
    let left = null;
    const drop = ({node}) => {
      left = node.matches(':focus-visible') ? node.dataset.place : left;
      node.remove();
      this.#handles.delete(node.dataset.place);
    };
    for (const [place, handle] of this.#handles) {
      if (!wanted.some(want => want.place === place) || !this.#side) {
        drop(handle);
      }
    }
    for (const want of this.#side ? wanted : []) {
      const known = this.#handles.get(want.place);
      const at = this.#at(want) ?? (known?.grip && known.at);
      if (!at) {
        if (known) {
          drop(known);
        }
        continue;
      }
      const handle = known ?? this.#make(want.place);
      Object.assign(handle, {want, at, step});
      this.#lay(handle);
      handle.node.setAttribute('aria-label', want.label);
      handle.node.setAttribute('aria-valuetext', want.text);
      handle.node.setAttribute('aria-valuenow', want.now);
      handle.node.setAttribute('aria-valuemin', want.least);
      handle.node.setAttribute('aria-valuemax', want.most);
    }
    return left;
  }

  /** A free end that is dragged is where the hand is. */
  #lay({node, at, spot}) {
    node.setAttribute('transform', `translate(${(spot ?? this.#toShown(at)).join(' ')})`);
  }

  /** The greatest station of a stem; null without a picture of it. */
  end(stem) {
    return this.#side?.axes[stem]?.stations.at(-1) ?? null;
  }

  /** Pixels to the metre; zero without a picture. */
  get scale() {
    return this.#side?.scale ?? 0;
  }

  /** Azimuth to the right of the picture, in radians. */
  get azimuth() {
    return this.#side?.azimuth ?? 0;
  }

  #at(want) {
    const {view} = this.#side;
    const drawn = want.place === 'tail' ? view.querySelector('.tail') : view.querySelector(`.point[data-place="${want.place}"]`);
    // A leg that is broken off does not end where it is drawn.
    if (!drawn || (want.place === 'tail' && view.querySelector('.leg[data-to="tail"][data-broken="true"]'))) {
      return null;
    }
    return want.place === 'tail'
      ? [Number(drawn.getAttribute('cx')), Number(drawn.getAttribute('cy'))]
      : [Number(drawn.dataset.x), Number(drawn.dataset.y)];
  }

  #make(place) {
    const node = element('g', {role: 'slider', tabindex: '0', 'data-place': place}, this.#overlay);
    element('circle', {class: 'touch', r: 22}, node);
    element('circle', {class: 'ring', r: 11}, node);
    const handle = {node};
    this.#handles.set(place, handle);
    node.addEventListener('keydown', event => this.#key(event, handle));
    // A finger on a handle drags it and does not scroll the page.
    node.addEventListener('touchstart', event => event.preventDefault(), {passive: false});
    node.addEventListener('pointerdown', event => this.#grab(event, handle));
    node.addEventListener('pointermove', event => this.#drag(event, handle));
    for (const end of ['pointerup', 'pointercancel', 'lostpointercapture']) {
      node.addEventListener(end, () => this.#letGo(handle));
    }
    return handle;
  }

  /** Where a pointer is on the sheet as it is shown. */
  #spot(event) {
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(this.#overlay.getScreenCTM().inverse());
    return [point.x, point.y];
  }

  #letGo(handle) {
    if (!handle.grip) {
      return;
    }
    handle.grip = null;
    handle.spot = null;
    if (this.#held) {
      this.#held = null;
      this.#place();
    }
    handle.want.letGo?.();
  }

  #grab(event, handle) {
    event.preventDefault();
    handle.node.focus({preventScroll: true});
    handle.node.setPointerCapture(event.pointerId);
    const [x, y] = this.#spot(event);
    // A point hangs beside its station: what the hand moves is the station.
    const from = handle.want.moveTo ? placeOf(this.#side.axes[handle.want.stem], handle.want.station) : handle.at;
    handle.grip = [from[0] - x, from[1] - y];
    if (!handle.want.moveTo) {
      const {scale, left, top} = this.#side;
      this.#held = {scale, left, top};
    }
  }

  #drag(event, handle) {
    if (!handle.grip || !this.#side) {
      return;
    }
    const [x, y] = this.#spot(event).map((value, d) => value + handle.grip[d]);
    if (handle.want.moveTo) {
      handle.want.moveTo(nearest(this.#side.axes[handle.want.stem], [x, y]));
    } else {
      const {scale, left, top} = this.#held;
      handle.spot = [x, y];
      this.#lay(handle);
      handle.want.drag((x - left) / scale, (top - y) / scale);
    }
  }

  #key(event, handle) {
    if (event.altKey || event.ctrlKey || event.metaKey) {
      return;
    }
    const {want, step} = handle;
    const ways = {
      ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1], PageUp: [0, 10], PageDown: [0, -10],
    };
    if (event.key in ways) {
      const [right, up] = ways[event.key];
      const moved = (place, count) => (count === 0 ? place : stepped(place, step, count));
      if (want.moveTo) {
        want.moveTo(moved(want.station, right + up));
      } else {
        want.put(moved(want.along, right), moved(want.up, up));
      }
    } else if (want.moveTo && event.key === 'Home') {
      want.moveTo(0);
    } else if (want.moveTo && event.key === 'End') {
      want.moveTo(this.end(want.stem));
    } else {
      return;
    }
    event.preventDefault();
  }
}
