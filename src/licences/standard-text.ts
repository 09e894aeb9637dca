import { licenceOf } from "./licence";
import type { ShippedPackage } from "./shipped-package";

const NO_WARRANTY_MIT =
  'THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE ' +
  "WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR " +
  "COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, " +
  "ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.";

const NO_WARRANTY_ISC =
  'THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED ' +
  "WARRANTIES OF MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT, INDIRECT, OR " +
  "CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF CONTRACT, " +
  "NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF THIS SOFTWARE.";

const paragraphs = (...texts: readonly string[]): string => texts.join("\n\n");

// https://spdx.org/licenses/MIT.html, https://spdx.org/licenses/ISC.html
const BY_LICENCE: Readonly<Record<string, string>> = {
  MIT: paragraphs(
    "Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated documentation " +
      'files (the "Software"), to deal in the Software without restriction, including without limitation the rights to use, copy, ' +
      "modify, merge, publish, distribute, sublicense, and/or sell copies of the Software, and to permit persons to whom the Software " +
      "is furnished to do so, subject to the following conditions:",
    "The above copyright notice and this permission notice shall be included in all copies or substantial portions of the Software.",
    NO_WARRANTY_MIT,
  ),
  ISC: paragraphs(
    "Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby granted, " +
      "provided that the above copyright notice and this permission notice appear in all copies.",
    NO_WARRANTY_ISC,
  ),
};

// Its words name nobody, so that every package has the same (https://spdx.org/licenses/Apache-2.0.html).
const SAME_FOR_ALL = "Apache-2.0";

const fromAnother = (packages: readonly ShippedPackage[]): string | undefined => {
  const other = packages.find((shipped) => licenceOf(shipped) === SAME_FOR_ALL && shipped.texts.some(({ kind }) => kind === "licence"));
  return other === undefined ? undefined : `Its text stands in this file under ${other.name}.`;
};

/** The words of a licence for a package that came without a file of them; nothing where we have none. */
export const standardText = (licence: string, packages: readonly ShippedPackage[]): string | undefined =>
  licence === SAME_FOR_ALL ? fromAnother(packages) : BY_LICENCE[licence];
