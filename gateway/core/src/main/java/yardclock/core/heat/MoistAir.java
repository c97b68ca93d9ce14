package yardclock.core.heat;

/**
 * How air carries heat and water, for the outdoor model: temperatures in K, pressures in hPa, SI
 * otherwise. The relations are those the model's paper names (kinetic theory for viscosity and
 * diffusion; Buck's saturation pressure with its enhancement factor; Oke's emissivity of the sky).
 */
final class MoistAir {
    static final double SPECIFIC_HEAT = 1003.5;
    static final double MOLAR_AIR = 28.97;
    static final double MOLAR_WATER = 18.015;
    static final double GAS = 8314.34 / MOLAR_AIR;
    static final double PRANDTL = SPECIFIC_HEAT / (SPECIFIC_HEAT + 1.25 * GAS);

    private MoistAir() {}

    static double saturation(double kelvin) {
        double celsius = kelvin - Vapour.ZERO_C;
        double exponent =
                celsius > 0
                        ? 17.502 * celsius / (celsius + 240.97)
                        : 22.452 * celsius / (celsius + 272.55);
        return 1.004 * (celsius > 0 ? 6.1121 : 6.1115) * StrictMath.exp(exponent);
    }

    static double density(double kelvin, double hectopascal) {
        return hectopascal * 100 / (GAS * kelvin);
    }

    static double viscosity(double kelvin) {
        double collision = (kelvin / 97 - 2.9) / 0.4 * -0.034 + 1.048;
        return 2.6693e-6 * StrictMath.sqrt(MOLAR_AIR * kelvin) / (3.617 * 3.617 * collision);
    }

    static double conductivity(double kelvin) {
        return (SPECIFIC_HEAT + 1.25 * GAS) * viscosity(kelvin);
    }

    /** Of water vapour in air, m²/s (Bird, Stewart, Lightfoot: critical-point correlation). */
    static double diffusivity(double kelvin, double hectopascal) {
        double temperatures = 132 * 647.3;
        double reduced = kelvin / StrictMath.sqrt(temperatures);
        return 3.640e-4
                * StrictMath.pow(reduced, 2.334)
                * StrictMath.cbrt(36.4 * 218)
                * StrictMath.pow(temperatures, 5.0 / 12)
                * StrictMath.sqrt(1 / MOLAR_AIR + 1 / MOLAR_WATER)
                / (hectopascal / 1013.25)
                * 1e-4;
    }

    /** Heat to evaporate water, J/kg. */
    static double evaporation(double kelvin) {
        return (313.15 - kelvin) / 30 * -71_100 + 2.4073e6;
    }

    static double skyEmissivity(double vapour) {
        return 0.575 * StrictMath.pow(vapour, 0.143);
    }
}
