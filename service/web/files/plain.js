// What the service says of a question, in the words of its form. Its sentences are
// for programs' logs as well: they name fields as the contract does, values as it
// spells them, and leave out a subject that the field is.

import { sized } from './units.js';

// verbs are how a sentence begins whose subject is the field.
const verbs = new Set(`is are was were has have falls asks gives leave leaves allows allow speaks differ differs make makes excludes
needs lies must says cannot can takes goes ends belongs belong would may fits draws rounds`.split(/\s+/));

const spelt = /\b[a-z][a-z0-9]*(?:_[a-z0-9]+)*(?:\[\d+\])?(?:\.[a-z][a-z0-9_]*(?:\[\d+\])?)*/g;
const alone = /^(?:needs|excludes|is missing, and so is) ([a-z]+)\b/;

// named puts what the form calls things in the place of their names in the contract.
function named(text, names) {
  const single = alone.exec(text)?.[1];
  return text
    .replace(spelt, (found) => {
      if (!/[_[]|\.[a-z]/.test(found) && found !== single) return found;
      const label = names.label(found);
      return label ? `“${label}”` : found.replaceAll('_', ' ');
    })
    .replace(/\bPlan([A-Z]\w+)/g, (_, of) => `the plan of the ${of.toLowerCase()}`)
    .replace(/\b[A-Z][A-Z0-9]*(?:_[A-Z0-9]+)+\b/g, (value) => names.value(value));
}

// forVisitors is a text of an answer without the methods that it names for programs.
export const forVisitors = (text) => text.replace(/ \((?:[A-Z][a-z]+Service\.)?(?:Plan|Compute|Check|List|Estimate|Convert)[A-Z]\w*\)/g, '');

function sentence(text) {
  const whole = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.?!]$/.test(whole) ? whole : `${whole}.`;
}

const begins = (text) => /^\S+/.exec(text)?.[0] ?? '';

// plainNotice is a remark on a question. names: {label(path), value(name)}.
export function plainNotice({ field = '', description }, names) {
  const label = field ? names.label(field) : '';
  const text = named(forVisitors(description), names);
  if (!label) return sentence(text);
  return sentence(verbs.has(begins(description)) ? `“${label}” ${text}` : `${label}: ${text}`);
}

// reach is the range of a field in a person's words and unit.
function reach({ min, max, unit: sign }, unit) {
  const low = sized(min, sign, unit);
  const high = sized(max, sign, unit);
  // A least value as small as that says only that there has to be one.
  return min > 0 && min < 0.001 ? `more than 0, and ${high} at the most` : `from ${low} to ${high}`;
}

// plainFault is what is wrong with a field, said beside it. field is its description,
// where it is a single value, and given whether it has one: 0, which the service takes for none.
export function plainFault({ reason, description = '' }, field, unit, names, given) {
  const numbers = field && (field.kind === 'number' || field.kind === 'whole') && field.min !== undefined && field.max !== undefined;
  const [, other] = /^(?:excludes|is missing, and so is) (\S+?); give one of them( or both)?$/.exec(description) ?? [];
  const both = description.endsWith('or both');
  switch (true) {
    case reason === 'CONTRADICTORY' && other !== undefined: return `Give this or “${names.label(other) || other}”, not both.`;
    case reason === 'REQUIRED' && other !== undefined:
      return `Give this or “${names.label(other) || other}”${both ? ', or both' : ''}.`;
    case reason === 'REQUIRED' && field !== undefined && !given: return 'Needs a value.';
    case numbers && /^is (\S+|missing or 0); must be from \S+ to \S+$/.test(description): return `Must be ${reach(field, unit)}.`;
    case /^is missing, and so are the other /.test(description): return 'Give one of these.';
    default: return sentence(named(description.replace(/^is missing; /, 'needs a value: '), names));
  }
}
