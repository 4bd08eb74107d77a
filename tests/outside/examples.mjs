// Prints the examples of the CommonMark specification as JSON.
//   node examples.mjs NODE_MODULES
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const require = createRequire(pathToFileURL(`${process.argv[2]}/`));
console.log(JSON.stringify(require("commonmark-spec").tests));
