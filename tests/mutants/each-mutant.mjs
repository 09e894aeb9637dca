/** A line for each mutant when it was tried, so that a run that is stopped was not for nothing. */
class EachMutant {
  onMutantTested({ fileName, location, mutatorName, status }) {
    if (status !== "Ignored")
      console.log(`${status}: ${fileName.replaceAll("\\", "/").replace(/^.*\/src\//, "src/")}:${location.start.line} ${mutatorName}`);
  }
}

export const strykerPlugins = [{ kind: "Reporter", name: "each-mutant", injectableClass: EachMutant }];
