// The English texts that the page does not bring with it: what this pack is made of.

export { EN_SUMS as TEXTS } from '../en-sums.js';
export { WHY } from '../why.js';
export const RECIPE = {};
