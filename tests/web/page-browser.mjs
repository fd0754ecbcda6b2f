// What each page has of its own of a browser; everything else is shared.

export const BROWSER = [
  "MutationObserver",
  "Worker",
  "addEventListener",
  "clearInterval",
  "clearTimeout",
  "document",
  "fetch",
  "indexedDB",
  "localStorage",
  "location",
  "navigator",
  "setInterval",
  "setTimeout",
];
