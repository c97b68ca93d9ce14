// The safety page's own words, added to the dictionary when its page is loaded.
import { learn } from "../words.js";
import { onWatch } from "./on-watch.js";

learn(onWatch);
