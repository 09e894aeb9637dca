const defaultPort = 3000;
const lastPort = 65535;

/** The port to begin with, from the PORT setting; text that is no port is an error that says so. */
export const askedPort = (setting: string | undefined): number => {
  if (setting === undefined || setting.trim() === "") return defaultPort;
  const port = Number(setting);
  if (Number.isInteger(port) && port >= 0 && port <= lastPort) return port;
  throw new Error(`PORT: must be a whole number from 0 to ${lastPort}, got "${setting}".`);
};
