import { useEffect, useState } from "preact/hooks";

// As the columns of css/screens.css: two things fit beside each other from here on.
const WIDE = "(min-width: 760px)";

/** Whether the screen has room for a table of many columns. */
export function useWide() {
  const [isWide, setWide] = useState(() => matchMedia(WIDE).matches);
  useEffect(() => {
    const asked = matchMedia(WIDE);
    const look = () => setWide(asked.matches);
    asked.addEventListener("change", look);
    return () => asked.removeEventListener("change", look);
  }, []);
  return isWide;
}
