export { CAUTION, SAW_CAUTION } from "../solver/caution";
