import { useEffect, useState } from "preact/hooks";

// As the columns of css/screens.css: two things fit beside each other from here on.
const WIDE = matchMedia("(min-width: 760px)");

/** Whether the screen has room for a table of many columns. */
export function useWide() {
  const [isWide, setWide] = useState(WIDE.matches);
  useEffect(() => {
    const look = () => setWide(WIDE.matches);
    WIDE.addEventListener("change", look);
    return () => WIDE.removeEventListener("change", look);
  }, []);
  return isWide;
}
