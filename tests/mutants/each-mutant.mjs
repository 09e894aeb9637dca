/** A line for each mutant when it was tried, so that a run that is stopped was not for nothing. */
class EachMutant {
  onMutantTested({ fileName, location, mutatorName, status, statusReason = "" }) {
    if (status === "Ignored") return;
    const place = `${fileName.replaceAll("\\", "/").replace(/^.*\/src\//, "src/")}:${location.start.line}`;
    console.log(`${status}: ${place} ${mutatorName}${status === "RuntimeError" ? ` (${statusReason.slice(0, 200)})` : ""}`);
  }
}

export const strykerPlugins = [{ kind: "Reporter", name: "each-mutant", injectableClass: EachMutant }];
