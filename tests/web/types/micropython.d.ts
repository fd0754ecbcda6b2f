// What the page uses of the interpreter that stands at /lib/micropython.mjs.

interface Interpreter {
  FS: {
    mkdirTree(path: string): void;
    writeFile(path: string, content: string | Uint8Array): void;
  };
  pyimport(name: string): any;
}

export function loadMicroPython(options: {
  url: string;
  heapsize: number;
  stdout: (line: string) => void;
  stderr: (line: string) => void;
}): Promise<Interpreter>;
