import { refuse } from '../../core/inputError.js';
import { isBlank, quoted } from '../../core/quantity/cellValue.js';
import { nameKey } from '../../core/shop/table.js';
import type { Choice, ScalarArgument } from './argument.js';

/** One of a few words. */
export function choiceArgument<Word extends string>(
  meaning: string,
  choices: readonly (Choice & { value: Word })[],
): ScalarArgument<Word> {
  const allowed = `Write ${choices.map((choice) => choice.value).join(', ')}.`;
  return {
    kind: 'choice',
    meaning,
    dimensionality: 'scalar',
    optional: false,
    choices,
    read: (value, { argument }) => {
      if (isBlank(value)) return refuse(argument, '', 'the cell is blank.', allowed);
      const chosen = choices.find((choice) => nameKey(choice.value) === nameKey(value));
      return (
        chosen?.value ??
        refuse(argument, String(value), `${quoted(value)} is not one of the choices.`, allowed)
      );
    },
  };
}

/** The same; undefined when left out. */
export function optionalChoiceArgument<Word extends string>(
  meaning: string,
  choices: readonly (Choice & { value: Word })[],
  omitted: string,
): ScalarArgument<Word | undefined> {
  const required = choiceArgument(meaning, choices);
  return {
    ...required,
    optional: true,
    omitted,
    read: (value, context) => (isBlank(value) ? undefined : required.read(value, context)),
  };
}
