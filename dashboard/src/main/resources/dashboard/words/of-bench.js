// The bench's own words, added to the dictionary when its page is loaded.
import { learn } from "../words.js";
import { onBench } from "./on-bench.js";
import { onClocks } from "./on-clocks.js";
import { onCalibration } from "./on-calibration.js";
import { onProof } from "./on-proof.js";
import { onTriggers } from "./on-triggers.js";

learn({ ...onBench, ...onClocks, ...onCalibration, ...onTriggers, ...onProof });
