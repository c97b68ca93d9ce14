// The words of the course's own pages: control, crew, watch, board and leaderboard.
import { learn } from "../words.js";
import { onControl } from "./on-control.js";

learn(onControl);
