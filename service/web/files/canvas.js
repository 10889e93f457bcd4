// What all drawings share: the canvas, and how the frame of an outline lies on it.

import { drawn } from './element.js';

export const wide = 600;
export const margin = { left: 14, right: 14, top: 14, bottom: 14 };
const tallest = 460;
// A stitch is a little wider than a row is tall, in most fabrics.
const rowToStitch = 0.75;

export function canvas(height, ...children) {
  return drawn('svg', { viewBox: `0 0 ${wide} ${height.toFixed(1)}`, class: 'drawing' }, ...children);
}

// scale maps the frame of an outline to a part of the canvas, both ways alike where
// both are lengths. The part begins at left and is so wide; above and below stay free.
export function scale({ x, y }, { left = margin.left, width = wide - margin.left - margin.right, above = margin.top,
  below = margin.bottom } = {}) {
  const across = x.greatest - x.least || 1;
  const up = y.greatest - y.least || 1;
  const aspect = x.unit === y.unit ? 1 : x.unit === 'OUTLINE_UNIT_STITCHES' && y.unit === 'OUTLINE_UNIT_ROWS' ? rowToStitch : 0;
  let sx = width / across;
  let sy = aspect ? sx * aspect : 260 / up;
  const most = tallest / up;
  if (sy > most) {
    if (aspect) sx *= most / sy;
    sy = most;
  }
  // A thin plan would be a line: it is drawn taller than it is.
  sy = Math.max(sy, 40 / up);
  const begin = left + (width - sx * across) / 2;
  const height = sy * up + above + below;
  return { height, at: (p) => [begin + (p.x - x.least) * sx, height - below - (p.y - y.least) * sy] };
}

export function pathOf(points) {
  return points.map(([px, py], i) => `${i ? 'L' : 'M'}${px.toFixed(1)} ${py.toFixed(1)}`).join('');
}

// said writes a text, or several lines of it, the first of them at a place.
export function said(text, x, y, anchor = 'start') {
  const at = x.toFixed(1);
  return drawn('text', { x: at, y: y.toFixed(1), class: 'said', 'text-anchor': anchor },
    ...[text].flat().map((line, i) => drawn('tspan', { x: at, dy: i && '1.15em' }, line)));
}
