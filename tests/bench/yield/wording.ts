/** How figures are written. */
export const whole = (number: number): string => (Number.isFinite(number) ? Math.round(number).toLocaleString("en-US") : "none");
export const milliseconds = (number: number): string => `${number < 100 ? number.toFixed(1) : whole(number)} ms`;
export const seconds = (number: number): string => `${number.toFixed(2)} s`;
export const percent = (number: number, digits = 1): string => `${number.toFixed(digits)} %`;
export const megabytes = (number: number): string => `${whole(number)} MB`;
