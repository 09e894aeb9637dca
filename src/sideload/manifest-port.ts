/** The port of this machine that a manifest names for its page; nothing where it names another machine. */
export const manifestPort = (manifest: string): number | undefined => {
  const port = /<SourceLocation DefaultValue="https:\/\/localhost:(\d{1,5})\//.exec(manifest)?.[1];
  return port === undefined ? undefined : Number(port);
};
