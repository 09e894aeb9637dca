/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { plantErrors } from "./planted-errors";

plantErrors(2);
