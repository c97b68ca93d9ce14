// What only the proctor's page says.
import { learn } from "../words.js";
import { onGap } from "./on-gap.js";

learn(onGap);
