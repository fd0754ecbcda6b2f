// What each page has of its own of a browser; everything else is shared.

export const BROWSER = [
  "Worker",
  "addEventListener",
  "clearInterval",
  "clearTimeout",
  "document",
  "fetch",
  "indexedDB",
  "localStorage",
  "navigator",
  "setInterval",
  "setTimeout",
];
