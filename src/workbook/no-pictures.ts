import { type BaseFunction, type BaseValueObject, ErrorType } from "@univerjs/engine-formula";
import { errorObject } from "./error-sentence";

const IN_THE_CELL = /^data:image\//i;

/** What the engine's IMAGE does with each of its sources. */
interface Pictures {
  _handleSingleObject: (source: BaseValueObject, ...more: readonly BaseValueObject[]) => BaseValueObject;
}

/** IMAGE fetches nothing: what a shop has in its sheets is no business of another machine. */
export const withoutFetching = (image: BaseFunction): void => {
  const pictures = image as unknown as Pictures;
  const plain = pictures._handleSingleObject.bind(image);
  pictures._handleSingleObject = (source, ...more) =>
    source.isString() && !IN_THE_CELL.test(String(source.getValue()))
      ? errorObject(ErrorType.VALUE, "IMAGE: pictures are not fetched from the net here; link to it with HYPERLINK")
      : plain(source, ...more);
};
