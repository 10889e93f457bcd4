// A plan as a drawing, out of the outline in the answer: every sum is done there, and
// here it is scaled to the canvas. Strokes and fills have classes, and so the colours
// of whatever page they stand on. What a drawing shows is said below it in words.

import { fromAbove, roundsOf } from './above.js';
import { compared, inWords } from './bars.js';
import { el } from './element.js';
import { left, leftInWords } from './left.js';
import { isMarks, isWish } from './lines.js';
import { heightOf, nested, pieces, side, waistOf, widthOf } from './pieces.js';
import { depthOf, openingOf, partsOf, plan, sizeOf, top, turns, wedge } from './plan.js';
import { placesOf, strip } from './row.js';
import { turnOf, twist } from './twist.js';
import { sized } from './units.js';

const signs = { OUTLINE_UNIT_CM: 'cm', OUTLINE_UNIT_STITCHES: 'stitches', OUTLINE_UNIT_ROWS: 'rows', OUTLINE_UNIT_PERCENT: '%',
  OUTLINE_UNIT_METRES: 'm' };

// More places than this are not listed.
const mostListed = 24;

// picture is a figure with a caption that says what is drawn. counts are what the answer has
// counted of its parts, by their names: {below, above, up} in words.
export function picture(outline, unit, { manner, counts = {} }) {
  const lines = outline.lines.filter((line) => line.points.length);
  if (!lines.length) return null;
  const [art, caption] = shown(lines, outline, wording(outline, unit, counts), manner);
  art.setAttribute('role', 'img');
  art.setAttribute('aria-label', `Drawing. ${caption}`);
  return el('figure', { class: 'picture', part: 'picture' }, art, el('figcaption', {}, caption));
}

// wording says measures: across and up are for the drawing, wide and high for its caption.
// What is drawn in stitches and rows has been counted already.
function wording({ x, y }, unit, counts) {
  const [over, along] = [signs[x.unit] ?? '', signs[y.unit] ?? ''];
  const counted = (sign, name, end) => (sign === 'cm' && counts[name]?.[end]) || '';
  const words = {
    x: (v) => sized(v, over, unit),
    y: (v) => sized(v, along, unit),
    across: (v, name, end) => [words.x(v), counted(over, name, end)].filter(Boolean).join(', '),
    up: (v, name) => [words.y(v), counted(along, name, 'up')].filter(Boolean),
    wide: (v, name, end) => words.across(v, name, end).replace(/, (.*)$/, ' ($1)'),
    turns: counts['']?.turns,
    fine: (v) => sized(v * 10, 'mm', unit), // what is smaller than a tenth of a centimetre
    high: (v, name) => words.up(v, name).join(', ').replace(/, (.*)$/, ' ($1)'),
  };
  return words;
}

// shown is the drawing that suits an outline, and what it shows in words.
function shown(lines, outline, say, manner) {
  const { x, y } = outline;
  const knit = lines.filter((line) => !isWish(line));
  const wishes = lines.filter(isWish);
  const all = pieces(knit);
  const dashed = wishes.length ? ' Dashed: what was wanted.' : '';
  if (y.unit === 'OUTLINE_UNIT_PLACES') return [compared(lines, outline, say.x), `${inWords(lines, (p) => say.x(p.x))}.`];
  if (manner === 'round') return yoke(roundsOf(lines), say);
  if (manner === 'top') return [top(lines, outline, say), necks(lines, say)];
  if (manner === 'twist') return [twist(lines, outline, say), yarn(lines, outline, say)];
  if (lines.every((line) => line.points.every((point) => point.y === line.points[0].y))) {
    return [strip(lines, outline), places(lines, outline, say)];
  }
  if (manner === 'nested' && all.length) return [nested(all, outline), `${sizes(all)}. ${sizeIn(knit, say)}.`];
  if (all.length) return [side(all, wishes, outline, say), `${capital(all.map((piece) => inPieces(piece, say)).join('; '))}.${laid(x)}${dashed}`];
  const edge = lines.find((line) => line.name === 'top edge');
  if (edge) return short(edge, lines, outline, say, dashed);
  if (manner === 'left') return [left(lines, outline, say), leftInWords(lines, outline, say)];
  const parts = partsOf(lines).map(({ name, left: from, right: to, foot, top: head }) =>
    `${name}, ${say.wide(to - from, name, 'below')} across and ${say.high(head - foot, name)} high`);
  const whole = parts.length ? `${capital(parts.join('; '))}.` : `${sizeIn(knit.filter((line) => !isMarks(line)), say)}.`;
  return [plan(lines, outline, say), `${counted(lines)}${whole}${dashed}${limbs(lines)}`];
}

// short is a wedge of short rows.
function short(edge, lines, outline, say, dashed) {
  const count = say.turns;
  const points = turns(edge, count);
  const where = points.length ? marked(points, 'turning points', outline.x.measure) : several(count, 'turning points');
  return [wedge(lines, outline, say, points), `${where}. ${sizeIn([edge], say)}.${dashed}`];
}

const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);

const several = (n, names) => `${n} ${n === 1 ? names.replace(/s$/, '') : names}`;

// laid says of what lies flat that it is half of what goes around.
const laid = (x) => (x.measure.startsWith('half the circumference') ? ' Laid flat: it is twice as much around.' : '');

function sizeIn(lines, say) {
  const { left: from, right: to, foot, top: head } = sizeOf(lines);
  return `${say.wide(to - from, '', 'below')} across and ${say.high(head - foot, '')} high`;
}

function inPieces(piece, say) {
  const [foot, head] = [[0, 'below'], [-1, 'above']].map(([i, end]) => say.wide(widthOf(piece, i), piece.name, end));
  const waist = waistOf(piece);
  const wide = foot === head ? `${foot} wide` : `${foot} wide below and ${head} above`;
  const between = waist ? `, ${say.wide(waist.width, piece.name, 'waist')} between` : '';
  const high = heightOf(piece) ? `, ${say.high(heightOf(piece), piece.name)} high` : '';
  return `${piece.name ? `${piece.name}: ` : ''}${wide}${between}${high}`;
}

function sizes(all) {
  const names = all.map((piece) => piece.name.replace(/^size /, ''));
  return `The edges of ${all.length > 1 ? `sizes ${names.join(', ')}, one in another` : `size ${names[0]}`}`;
}

function places(lines, outline, say) {
  const what = placesOf(lines).map((line) => marked(line.points, line.name)).join('; ');
  return `${what}; ${outline.x.measure}, ${say.x(outline.x.greatest)} in all.`;
}

function yoke(rounds, say) {
  const steps = rounds.slice(1).map(({ x, y }) => `to ${say.x(x)} at ${say.y(y)}`);
  const narrower = rounds.length <= mostListed ? steps.join(', ') : `in ${rounds.length - 1} rounds to ${say.x(rounds.at(-1).x)}`;
  return [fromAbove(rounds, say.x), `Seen from above: ${say.x(rounds[0].x)} around at the join, outside; from there decreased ${narrower}.`];
}

function necks(lines, say) {
  const [front, ...behind] = lines;
  const depth = (line) => `${line.name}, ${depthOf(line) ? `${say.high(depthOf(line), line.name)} deep` : 'straight'}`;
  return `The neck, ${say.wide(openingOf(front), 'neck', 'below')} wide between the shoulders: ${depth(front)}; dashed, ${behind.map(depth).join('; ')}.`;
}

function yarn(lines, outline, say) {
  const { length, letter } = turnOf(lines);
  return `A piece of the yarn, ${say.fine(outline.x.greatest)} thick, with one turn in ${say.fine(length)}; it slopes as the middle of ${letter === 'S' ? 'an S' : 'a Z'} does.`;
}

// marked says how many marks there are, and where the few are.
function marked(points, names, measure = '') {
  if (points.length > mostListed || !points.length) return several(points.length, names);
  return `${several(points.length, names)}, at ${points.map((p) => sized(p.x, '', 'cm')).join(', ')}${measure ? ` ${measure}` : ''}`;
}

// counted says how many marks there are, and how many lines of one name.
function counted(lines) {
  const names = lines.map((line) => line.name);
  const often = [...new Set(names)].map((name) => [name, names.filter((other) => other === name).length]).filter(([, n]) => n > 1);
  const marks = lines.filter(isMarks).map((line) => `${line.points.length} ${line.name}, each where it lies. `);
  const several = ([name, n]) => (/^line of /.test(name) ? `${capital(name.slice(8))} along ${n} lines. `
    : `${n} ${name.replace(/^beginning of an? (\w+)$/, '$1')}s. `);
  return often.map(several).concat(marks).join('');
}

// limbs says which of them one sees, and which lie behind.
function limbs(lines) {
  const [before, behind] = [/^limb \d+$/, /^limb \d+, behind$/].map((name) =>
    lines.filter((line) => name.test(line.name)).map((line) => line.name.replace(/\D/g, '')).join(', '));
  return (before ? ` Limbs in front: ${before}.` : '') + (behind ? ` Limbs behind, dashed: ${behind}.` : '');
}
