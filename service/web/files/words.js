// Names of the contract in a person's words.

const units = { cm: 'cm', mm: 'mm', m: 'm', g: 'g', percent: '%', degrees: '°', cm2: 'cm²' };

// labelled parts the name of a figure into a label and the sign of its unit.
export function labelled(name) {
  const parts = name.split('_');
  // What is counted to a length, "twist_per_cm", is no length itself.
  const sign = parts.length > 1 && parts.at(-2) !== 'per' ? units[parts.at(-1)] : undefined;
  const label = (sign ? parts.slice(0, -1) : parts).join(' ');
  return { label: label.charAt(0).toUpperCase() + label.slice(1), sign: sign ?? '' };
}

// The names of the enums of the answers that are shown, as their values begin.
const enums = new Set();

export function knowValues(names) {
  for (const name of names) enums.add(name);
}

// valueWord is the value of an enum without the name that it shares with its fellows.
export function valueWord(value) {
  const name = [...enums].filter((begin) => value.startsWith(begin)).sort((a, b) => b.length - a.length)[0] ?? '';
  return value.slice(name.length).toLowerCase().replaceAll('_', ' ');
}

// isValue tells the value of an enum from text: no text of an answer is in capitals alone.
export function isValue(value) {
  return /^[A-Z][A-Z0-9]*(_[A-Z0-9]+)+$/.test(value);
}

// standing is how far a source can be trusted, in words.
export function standing(source) {
  const word = {
    SOURCE_STATUS_PUBLISHED: 'published',
    SOURCE_STATUS_COMMON_PRACTICE: 'common practice',
    SOURCE_STATUS_OWN_DERIVATION: 'worked out here',
    SOURCE_STATUS_FROM_MEMORY: 'from memory, not read again',
    SOURCE_STATUS_SECOND_HAND: 'read in another’s account',
  }[source.status] ?? 'standing not said';
  return source.uncertain ? `${word}; the reading is in doubt` : word;
}
