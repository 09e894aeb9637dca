const { transformFileSync } = require("@swc/core");

// Lets plain Node load the solver as it stands in src/.
require.extensions[".ts"] = (module, file) => {
  const { code } = transformFileSync(file, {
    jsc: { parser: { syntax: "typescript" }, target: "es2022" },
    module: { type: "commonjs" },
    swcrc: false,
  });
  module._compile(code, file);
};
