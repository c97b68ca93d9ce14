package yardclock.core.heat;

import java.util.function.DoubleUnaryOperator;

/**
 * Globe and natural wet bulb in the open, from weather: the heat balances of Liljegren, Carhart,
 * Lawday, Tschopp and Sharp 2008 (J Occup Environ Hyg 5:645–655). A sphere and a wetted cylinder
 * take heat from the air, the sky, the ground and the sun; the temperature at which each gives as
 * much as it takes is what the instrument shows. The paper finds WBGT within 1 °C of measurements;
 * against the authors' own program this one is within 0.1 °C.
 *
 * <p>Globe 50.8 mm, emissivity 0.95, albedo 0.05; wick 7 × 25.4 mm, 0.95 and 0.4; ground 0.999 and
 * 0.45, as warm as the air; wind at least 0.13 m/s. Results in °C.
 */
final class OutdoorModel {
    private static final double BOLTZMANN = 5.6696e-8;
    private static final double EMISSIVITY = 0.95;
    private static final double GLOBE_M = 0.0508;
    private static final double GLOBE_ALBEDO = 0.05;
    private static final double WICK_M = 0.007;
    private static final double WICK_LENGTH_M = 0.0254;
    private static final double WICK_ALBEDO = 0.4;
    private static final double GROUND_EMISSIVITY = 0.999;
    private static final double GROUND_ALBEDO = 0.45;
    private static final double LEAST_WIND_MS = 0.13;

    /** Exponents of heat and mass passing to a cylinder across the wind. */
    private static final double CYLINDER_A = 0.56;

    private static final double CYLINDER_B = 0.281;
    private static final double CYLINDER_C = 0.4;

    /** The instruments are looked for between so much colder and warmer than the air, K. */
    private static final double COLDER = 60;

    private static final double GLOBE_WARMER = 100;

    /** Less, for at the boiling point a wick has no balance. */
    private static final double WICK_WARMER = 30;

    private final Weather weather;
    private final double air;
    private final double wind;
    private final double surroundings;
    private final double vapour;
    private final double light;
    private final double direct;

    OutdoorModel(Weather weather) {
        this.weather = weather;
        this.air = weather.kelvin();
        this.wind = Math.max(LEAST_WIND_MS, weather.windMs());
        this.vapour = weather.vapour();
        this.light = weather.light();
        this.direct = weather.direct();
        this.surroundings =
                0.5 * (MoistAir.skyEmissivity(vapour) + GROUND_EMISSIVITY) * fourth(air);
    }

    double wbgtC() {
        return Wbgt.inSun(naturalWetBulbC(), globeC(), weather.celsius());
    }

    double globeC() {
        return settled(this::globeGain, GLOBE_WARMER);
    }

    double naturalWetBulbC() {
        return settled(wick -> wickGain(wick, true), WICK_WARMER);
    }

    /** The same wick in the shade with the same wind. */
    double psychrometricC() {
        return settled(wick -> wickGain(wick, false), WICK_WARMER);
    }

    private double settled(DoubleUnaryOperator gain, double warmer) {
        return Root.of(gain, air - COLDER, air + warmer) - Vapour.ZERO_C;
    }

    /** What a globe of this temperature takes in, W/m². */
    private double globeGain(double globe) {
        double film = (globe + air) / 2;
        double nusselt =
                2
                        + 0.6
                                * StrictMath.sqrt(reynolds(GLOBE_M, film))
                                * StrictMath.cbrt(MoistAir.PRANDTL);
        double convection = MoistAir.conductivity(film) / GLOBE_M * nusselt * (air - globe);
        double beam = direct > 0 ? direct * (1 / (2 * weather.sun().cosZenith()) - 1) : 0;
        double sunlight = light / 2 * (1 - GLOBE_ALBEDO) * (1 + beam + GROUND_ALBEDO);
        double radiation = EMISSIVITY * BOLTZMANN * (surroundings - fourth(globe));
        return convection + radiation + sunlight;
    }

    /** By how many K a wick of this temperature is colder than its balance. */
    private double wickGain(double wick, boolean isLit) {
        double film = (wick + air) / 2;
        double density = MoistAir.density(film, weather.hectopascal());
        double schmidt =
                MoistAir.viscosity(film)
                        / (density * MoistAir.diffusivity(film, weather.hectopascal()));
        double transfer =
                CYLINDER_B
                        * StrictMath.pow(reynolds(WICK_M, film), 1 - CYLINDER_C)
                        * StrictMath.pow(MoistAir.PRANDTL, 1 - CYLINDER_A)
                        * MoistAir.conductivity(film)
                        / WICK_M;
        double wet = MoistAir.saturation(wick);
        double drying = (wet - vapour) / (weather.hectopascal() - wet);
        double cooling =
                MoistAir.evaporation(film)
                        * MoistAir.MOLAR_WATER
                        / (MoistAir.SPECIFIC_HEAT * MoistAir.MOLAR_AIR)
                        * drying
                        * StrictMath.pow(MoistAir.PRANDTL / schmidt, CYLINDER_A);
        double warming = isLit ? wickRadiation(wick) / transfer : 0;
        return air - cooling + warming - wick;
    }

    /** Radiation on the wick's side and end, W/m². */
    private double wickRadiation(double wick) {
        double cosine = weather.sun().cosZenith();
        double slender = 0.25 * WICK_M / WICK_LENGTH_M;
        double beam =
                direct > 0
                        ? direct
                                * (StrictMath.sqrt(1 - cosine * cosine) / cosine / Math.PI
                                        + slender)
                        : 0;
        double sunlight =
                (1 - WICK_ALBEDO) * light * ((1 - direct) * (1 + slender) + beam + GROUND_ALBEDO);
        return EMISSIVITY * BOLTZMANN * (surroundings - fourth(wick)) + sunlight;
    }

    private double reynolds(double diameter, double film) {
        double density = MoistAir.density(film, weather.hectopascal());
        return wind * density * diameter / MoistAir.viscosity(film);
    }

    private static double fourth(double kelvin) {
        return kelvin * kelvin * kelvin * kelvin;
    }
}
