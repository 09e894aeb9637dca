import { PROFILES } from "../../solver/code/profiles";

/** The codes a job can be checked against. */
export const CODE_CHOICES: readonly { readonly id: string; readonly title: string }[] = PROFILES.map(({ id, title, edition }) => ({
  id,
  title: `${id}: ${title}, ${edition}`,
}));
