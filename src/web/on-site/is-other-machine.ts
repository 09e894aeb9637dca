const OWN_MACHINE = /^(localhost|.*[.]localhost|127[.]\d+[.]\d+[.]\d+|\[::1\])$/i;

/** Whether a page comes from another machine than the one it is opened on, over https. */
export const isOtherMachine = ({ protocol, hostname }: Pick<Location, "protocol" | "hostname">): boolean =>
  protocol === "https:" && !OWN_MACHINE.test(hostname);
