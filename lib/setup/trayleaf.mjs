#!/usr/bin/env node
import { commandLine } from "./command-line.mjs";
import { endsPlainly } from "./ends-plainly.mjs";

await endsPlainly(() => commandLine(process.argv.slice(2)));
