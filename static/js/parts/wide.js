import { useEffect, useState } from "preact/hooks";

// As the columns of css/screens.css, for words of the usual size: two things fit beside
// each other from here on. Larger words need more room.
const WIDE_REM = 38;

function isRoomy() {
  const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
  return innerWidth >= WIDE_REM * rem;
}

// No event tells that words grew, but what is as wide as they are grows with them.
/** @param {() => void} look */
function watchWords(look) {
  const gauge = document.createElement("i");
  gauge.style.cssText = "position: fixed; width: 1rem; visibility: hidden";
  document.body.append(gauge);
  const size = new ResizeObserver(look);
  size.observe(gauge);
  return () => {
    size.disconnect();
    gauge.remove();
  };
}

/** Whether the screen has room for a table of many columns. */
export function useWide() {
  const [isWide, setWide] = useState(isRoomy);
  useEffect(() => {
    const look = () => setWide(isRoomy());
    addEventListener("resize", look);
    const stop = watchWords(look);
    return () => {
      stop();
      removeEventListener("resize", look);
    };
  }, []);
  return isWide;
}
