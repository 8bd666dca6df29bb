package org.fizzhull.drying.run;

/**
 * Air in which a dry piece keeps. Its films stay solid below the film activity; the margin covers how badly that is
 * known. For a plain mix it is 50 % RH, ± 5 % (docs/physics/drying.md, 9).
 *
 * @param below relative humidity to stay below
 * @param above relative humidity to stay above, 0 for none: drier air takes the water of hydrated salts into the mix
 */
public record SafeHumidity(double below, double above) {
    /** {@return whether any air suits the mix} */
    public boolean possible() {
        return above < below;
    }
}
