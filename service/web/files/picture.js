// A plan as a drawing, out of the outline in the answer: every sum is done there, and
// here it is scaled to the canvas. Strokes and fills have classes, and so the colours
// of whatever page they stand on.

import { drawn, el } from './element.js';
import { sized } from './units.js';

const wide = 600;
const tallest = 460;
const margin = { left: 14, right: 14, top: 12, bottom: 12 };
// A stitch is a little wider than a row is tall, in most fabrics.
const rowToStitch = 0.75;

const signs = { OUTLINE_UNIT_CM: 'cm', OUTLINE_UNIT_STITCHES: 'stitches', OUTLINE_UNIT_ROWS: 'rows', OUTLINE_UNIT_PERCENT: '%',
  OUTLINE_UNIT_METRES: 'm' };

function along(axis, unit) {
  const sign = signs[axis.unit] ?? '';
  const length = sign === 'cm' || sign === 'm';
  return `${axis.measure}, ${sized(axis.least, length ? sign : '', unit)} to ${sized(axis.greatest, sign, unit)}`;
}

// picture is a figure with a caption that says what is drawn.
export function picture(outline, unit, manner) {
  const lines = outline.lines.filter((line) => line.points.length);
  if (!lines.length) return null;
  const places = outline.y.unit === 'OUTLINE_UNIT_PLACES';
  const level = lines.every((line) => line.points.every((point) => point.y === line.points[0].y));
  const art = places ? compared(lines, outline) : manner === 'round' ? fromAbove(lines) : level ? strip(lines, outline) : plan(lines, outline);
  const caption = places ? `${inWords(lines, outline, unit)}.` : manner === 'round'
    ? `Seen from above, with a circle wherever the circumference changes: ${along(outline.x, unit)}.`
    : `Across: ${along(outline.x, unit)}. ${level ? `Marked: ${counted(lines)}` : `Up: ${along(outline.y, unit)}`}.`;
  art.setAttribute('role', 'img');
  art.setAttribute('aria-label', `Drawing of the plan. ${caption}`);
  return el('figure', { class: 'picture', part: 'picture' }, art, el('figcaption', {}, caption));
}

function counted(lines) {
  const marked = lines.filter((line) => line.points.length > 2 || line.points[0].y > 0);
  return marked.map((line) => `${line.points.length} ${line.name}`).join(', ');
}

function canvas(height, ...children) {
  return drawn('svg', { viewBox: `0 0 ${wide} ${height.toFixed(1)}`, class: 'drawing' }, ...children);
}

// scale maps the frame of the outline to the canvas, both ways alike where both are
// lengths.
function scale(outline) {
  const { x, y } = outline;
  const across = x.greatest - x.least || 1;
  const up = y.greatest - y.least || 1;
  const sameUnit = x.unit === y.unit;
  const aspect = sameUnit ? 1 : x.unit === 'OUTLINE_UNIT_STITCHES' && y.unit === 'OUTLINE_UNIT_ROWS' ? rowToStitch : 0;
  let sx = (wide - margin.left - margin.right) / across;
  let sy = aspect ? sx * aspect : 260 / up;
  const most = tallest / up;
  if (sy > most) {
    if (aspect) sx *= most / sy;
    sy = most;
  }
  // A thin plan would be a line: it is drawn taller than it is.
  sy = Math.max(sy, 40 / up);
  const left = (wide - sx * across) / 2;
  const height = sy * up + margin.top + margin.bottom;
  return { height, at: (p) => [left + (p.x - x.least) * sx, height - margin.bottom - (p.y - y.least) * sy] };
}

function path(points) {
  return points.map(([px, py], i) => `${i ? 'L' : 'M'}${px.toFixed(1)} ${py.toFixed(1)}`).join('');
}

// plan draws lines as they lie; between two that make a piece there is fabric.
function plan(lines, outline) {
  const { height, at } = scale(outline);
  const manner = (line) => (line.name === 'wanted' ? 'ring' : 'line');
  const drawnLines = lines.map((line) =>
    drawn('path', { d: path(line.points.map(at)), class: manner(line) }, drawn('title', {}, line.name)));
  const both = lines.length === 2 && lines.every((line) => line.name.endsWith('edge'));
  const edges = both ? [lines[0].points.map(at), lines[1].points.map(at).reverse()] : null;
  const fabric = edges ? drawn('path', { d: `${path(edges[0].concat(edges[1]))}Z`, class: 'fabric' }) : null;
  // More corners than this would be a thick line.
  const few = lines.filter((line) => line.points.length <= 60).flatMap((line) => line.points.map(at));
  const corners = few.map(([cx, cy]) => drawn('circle', { cx: cx.toFixed(1), cy: cy.toFixed(1), r: 2.4, class: 'corner' }));
  return canvas(height, fabric, ...drawnLines, ...corners);
}

// strip draws places along a row or an edge: the row as a band, the places as marks.
function strip(lines, outline) {
  const height = 74;
  const span = outline.x.greatest - outline.x.least || 1;
  const across = (v) => margin.left + ((v - outline.x.least) / span) * (wide - margin.left - margin.right);
  const marks = lines.flatMap((line) => {
    const run = line.points.length === 2 && line.points[0].y === 0;
    if (run) return [];
    const r = Math.max(1.6, Math.min(6, 170 / line.points.length));
    return line.points.map((p) => drawn('circle', { cx: across(p.x).toFixed(1), cy: 20, r: r.toFixed(1), class: 'mark' }));
  });
  const places = marks.length <= 80 ? marks.map((mark) => mark.getAttribute('cx')) : [];
  const stems = places.map((cx) => drawn('line', { x1: cx, x2: cx, y1: 20, y2: 40, class: 'stem' }));
  const count = outline.x.unit === 'OUTLINE_UNIT_STITCHES' && span <= 200 ? span : 0;
  const stitches = Array.from({ length: Math.max(0, count - 1) }, (_, i) => {
    const x = across(outline.x.least + i + 1).toFixed(1);
    return drawn('line', { x1: x, x2: x, y1: 40, y2: 60, class: 'between' });
  });
  const band = drawn('rect', { x: margin.left, y: 40, width: wide - margin.left - margin.right, height: 20, class: 'fabric' });
  return canvas(height, band, ...stitches, ...stems, ...marks);
}

// fromAbove draws circumferences as circles around one middle.
function fromAbove(lines) {
  const rounds = [...new Set(lines.flatMap((line) => line.points.map((p) => p.x)))].sort((a, b) => b - a);
  const size = 300;
  const middle = wide / 2;
  const circles = rounds.map((x, i) => drawn('circle', { cx: middle, cy: size / 2, r: ((x / rounds[0]) * (size / 2 - 6)).toFixed(1),
    class: i === 0 ? 'fabric line' : i === rounds.length - 1 ? 'opening line' : 'ring' }));
  return canvas(size, ...circles);
}

// compared draws ranges under one another: a bar to what is likely, a stroke from the
// least to the most, and what stands across all of them as a line.
function compared(lines, outline) {
  const step = 44;
  const ranges = lines.filter((line) => line.points.length === 3);
  const x = (v) => margin.left + (v / (outline.x.greatest * 1.05 || 1)) * (wide - margin.left - margin.right);
  const rows = ranges.flatMap(({ name, points: [low, likely, high] }, i) => {
    const y = margin.top + i * step + 24;
    const [from, to] = [x(low.x).toFixed(1), x(high.x).toFixed(1)];
    return [drawn('text', { x: margin.left, y: y - 8, class: 'said' }, name),
      drawn('rect', { x: x(0), y, width: (x(likely.x) - x(0)).toFixed(1), height: 12, class: 'fabric' }),
      drawn('path', { d: `M${from} ${y + 6}H${to}M${from} ${y}V${y + 12}M${to} ${y}V${y + 12}`, class: 'line' }),
      drawn('circle', { cx: x(likely.x).toFixed(1), cy: y + 6, r: 4, class: 'mark' })];
  });
  const height = margin.top + ranges.length * step + margin.bottom;
  const across = lines.filter((line) => line.points.length === 2).map((line) => {
    const at = x(line.points[0].x).toFixed(1);
    return drawn('line', { x1: at, x2: at, y1: margin.top, y2: height - margin.bottom, class: 'stem' }, drawn('title', {}, line.name));
  });
  return canvas(height, ...rows, ...across);
}

// inWords says what compared draws.
function inWords(lines, outline, unit) {
  const sign = signs[outline.x.unit] ?? '';
  const said = (p) => sized(p.x, sign, unit);
  return lines.map(({ name, points: [low, likely, high] }) => (high
    ? `${name}: ${said(low)} at the least, ${said(likely)} likely, ${said(high)} at the most` : `${name}: ${said(low)}`)).join('; ');
}
