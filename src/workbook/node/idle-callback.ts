// The engine asks the page when it is idle; without a page it always is. Loaded before the engine.
const SLICE = 50;

Object.assign(globalThis, {
  requestIdleCallback: (call: (deadline: { readonly didTimeout: boolean; readonly timeRemaining: () => number }) => void) =>
    setTimeout(() => call({ didTimeout: false, timeRemaining: () => SLICE }), 0),
  cancelIdleCallback: clearTimeout,
});

export {};
