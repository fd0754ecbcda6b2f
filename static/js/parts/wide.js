import { useEffect, useState } from "preact/hooks";

// As the columns of css/screens.css, for words of the usual size: two things fit beside
// each other from here on. Larger words need more room.
const WIDE_REM = 38;

function isRoomy() {
  const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
  return innerWidth >= WIDE_REM * rem;
}

/** Whether the screen has room for a table of many columns. */
export function useWide() {
  const [isWide, setWide] = useState(isRoomy);
  useEffect(() => {
    const look = () => setWide(isRoomy());
    addEventListener("resize", look);
    return () => removeEventListener("resize", look);
  }, []);
  return isWide;
}
