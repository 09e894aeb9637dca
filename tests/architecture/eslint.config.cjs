const tseslint = require("typescript-eslint");

const pure = "A solver answers from what it is given alone: pass the value in.";

// Paths are read from the folder eslint is run in: the top of the project.
module.exports = tseslint.config(
  { files: ["**/*.ts"], extends: [...tseslint.configs.recommended] },
  {
    files: ["**/*.ts"],
    rules: {
      // Leaving one property out of a copy names it without using it.
      "@typescript-eslint/no-unused-vars": [
        "error",
        { ignoreRestSiblings: true, argsIgnorePattern: "^_", varsIgnorePattern: "^_", destructuredArrayIgnorePattern: "^_" },
      ],
    },
  },
  {
    files: ["**/*.{ts,cjs,mjs,js}"],
    rules: { eqeqeq: "error", "no-console": "error", "max-len": ["error", { code: 140, ignoreUrls: true, ignorePattern: "^import " }] },
  },
  {
    files: ["src/**/*.ts"],
    // A screen at most.
    rules: { "max-lines-per-function": ["error", { max: 60, skipBlankLines: true, skipComments: true }] },
  },
  {
    files: ["src/solver/**/*.ts"],
    rules: {
      "no-restricted-globals": ["error", { name: "Date", message: pure }],
      "no-restricted-properties": ["error", { object: "Math", property: "random", message: pure }],
      "no-restricted-syntax": [
        "error",
        { selector: "ClassDeclaration, ClassExpression", message: "A solver is functions and plain data, without classes." },
        { selector: "ExportDefaultDeclaration", message: "Export by name, so that one thing has one name." },
      ],
    },
  },
  {
    files: [
      "src/{serve,sideload,licences,hosting,generate,bootstrap,ready-files,calc}/**", "tests/bench/**",
      "tests/{fuzz,soak,damage,calc}/*.cjs", "tests/mutants/**",
    ],
    rules: { "no-console": "off" },
  },
);
