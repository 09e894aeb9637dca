import { ICommandService, type Injector } from "@univerjs/core";
import { SetScrollRelativeCommand } from "@univerjs/preset-sheets-core";

/** How far a finger may stray and still tap, in pixels. */
const STRAY = 8;

/** A finger on the sheet: where it was last, and whether it has begun to move the sheet. */
interface Finger {
  readonly id: number;
  x: number;
  y: number;
  isMoving: boolean;
}

const isOnSheet = ({ target, pointerType }: PointerEvent): boolean => pointerType === "touch" && target instanceof HTMLCanvasElement;

/** The press that was held back, now that it is known for a tap. */
const pressed = ({ target, pointerId, clientX, clientY, screenX, screenY }: PointerEvent): void => {
  const at = { clientX, clientY, screenX, screenY };
  const kind = { pointerId, pointerType: "touch", isPrimary: true, button: 0, buttons: 1 };
  target?.dispatchEvent(new PointerEvent("pointerdown", { ...at, ...kind, bubbles: true, cancelable: true, composed: true }));
};

/**
 * By touch one finger moves the sheet and a tap selects; two taps edit, as two clicks do. The engine would select from a finger's first
 * touch on and never move, so a press is held back until it is known for a tap.
 */
export const touch = (element: HTMLElement, injector: Injector): void => {
  const commands = injector.get(ICommandService);
  let finger: Finger | undefined;
  const on = (kind: "pointerdown" | "pointermove" | "pointerup" | "pointercancel", act: (event: PointerEvent) => void): void =>
    element.addEventListener(kind, (event) => {
      // What this file dispatches itself is the engine's.
      if (event.isTrusted && isOnSheet(event)) act(event);
    }, { capture: true });

  on("pointerdown", (event) => {
    event.stopPropagation();
    finger = event.isPrimary ? { id: event.pointerId, x: event.clientX, y: event.clientY, isMoving: false } : undefined;
  });
  on("pointermove", (event) => {
    event.stopPropagation();
    if (finger?.id !== event.pointerId) return;
    const [right, down] = [finger.x - event.clientX, finger.y - event.clientY];
    if (!finger.isMoving && Math.hypot(right, down) <= STRAY) return;
    Object.assign(finger, { x: event.clientX, y: event.clientY, isMoving: true });
    void commands.executeCommand(SetScrollRelativeCommand.id, { offsetX: right, offsetY: down });
  });
  on("pointerup", (event) => {
    const isTap = finger?.id === event.pointerId && !finger.isMoving;
    finger = undefined;
    if (isTap) pressed(event);
    else event.stopPropagation();
  });
  on("pointercancel", () => void (finger = undefined));
};
