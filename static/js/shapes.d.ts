// What travels between core, server and screens, as JSDoc names it. DEVELOPERS.md
// says what each means; here stands only enough for the page's own checks.

declare module "/lib/micropython.mjs" {
  export function loadMicroPython(options: object): Promise<any>;
}
declare module "/lib/uplot.js" {
  export { default } from "uplot";
}
