import { quantity } from '../format.js';
import { t } from '../messages/index.js';

/** The value of a reading in words: a figure with its unit, or the choice made. */
export function readingText(name, value) {
  return typeof value === 'string' ? t('choice.' + value) : quantity(name, value);
}
