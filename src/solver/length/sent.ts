import { Exact } from "./exact";

/** How an exact number goes from one thread, or one copy of the solver, to another, where only plain data passes. */
interface Sent {
  readonly exact: string;
}

const isSent = (value: object): value is Sent => "exact" in value && Object.keys(value).length === 1;

/** A value with its exact numbers as text. */
export const sent = (value: unknown): unknown => {
  if (value instanceof Exact) return { exact: value.toString() };
  if (Array.isArray(value)) return value.map(sent);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, sent(part)]));
};

/** The value that was sent. */
export const received = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(received);
  if (typeof value !== "object" || value === null) return value;
  if (isSent(value)) return new Exact(value.exact);
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, received(part)]));
};
