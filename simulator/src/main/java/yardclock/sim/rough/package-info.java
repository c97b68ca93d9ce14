/**
 * What goes wrong in a real yard, drawn beforehand from the seed: bodies that are not the
 * candidate's in beams and on mats, sensors that miss an edge, boards out of reach, crystals in the
 * sun, candidates close behind each other, hands that tap late or not at all.
 *
 * <p>A kind day's run is drawn first and then made rough; what the plan's triggers mean stays where
 * it was. Everything lives on the stage.
 *
 * <p>Invariant: nothing here moves the truth, and nothing here depends on what the gateway
 * concludes.
 */
package yardclock.sim.rough;
