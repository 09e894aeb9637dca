// Between its formulas the engine lets others come to a turn by a message to itself. Where a calculation is stopped it leaves the channel
// open, and an open channel of Node's keeps the whole process from ending. Loaded before the engine.
interface Port {
  onmessage: (() => void) | null;
  readonly postMessage: () => void;
  readonly close: () => void;
}

class TurnChannel {
  readonly port1: Port = { onmessage: null, postMessage: () => undefined, close: () => undefined };
  readonly port2: Port = { onmessage: null, postMessage: () => void setImmediate(() => this.port1.onmessage?.()), close: () => undefined };
}

Object.assign(globalThis, { MessageChannel: TurnChannel });

export {};
