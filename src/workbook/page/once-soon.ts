/** Calls once the page is done with what it does now, however often it is asked until then. */
export const onceSoon = (act: () => void): (() => void) => {
  let isAsked = false;
  return () => {
    if (isAsked) return;
    isAsked = true;
    setTimeout(() => {
      isAsked = false;
      act();
    }, 0);
  };
};
