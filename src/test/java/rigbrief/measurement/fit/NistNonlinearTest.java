package rigbrief.measurement.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.measurement.fit.CurveEquations.Curve;

/**
 * Certified values of the NIST Statistical Reference Datasets for non-linear regression, lower to
 * higher difficulty, reached by the fit that calibrates: parameters, their standard deviations and
 * the residual sum of squares.
 */
class NistNonlinearTest {
    private static final double[] MISRA_X = {
        77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760
    };
    private static final double[] MISRA_Y = {
        10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47,
        81.78
    };
    private static final double[] THURBER_X = {
        -3.067, -2.981, -2.921, -2.912, -2.840, -2.797, -2.702, -2.699, -2.633, -2.481, -2.363,
        -2.322, -1.501, -1.460, -1.274, -1.212, -1.100, -1.046, -0.915, -0.714, -0.566, -0.545,
        -0.400, -0.309, -0.109, -0.103, 0.010, 0.119, 0.377, 0.790, 0.963, 1.006, 1.115, 1.572,
        1.841, 2.047, 2.200
    };
    private static final double[] THURBER_Y = {
        80.574, 84.248, 87.264, 87.195, 89.076, 89.608, 89.868, 90.101, 92.405, 95.854, 100.696,
        101.060, 401.672, 390.724, 567.534, 635.316, 733.054, 759.087, 894.206, 990.785, 1090.109,
        1080.914, 1122.643, 1178.351, 1260.531, 1273.514, 1288.339, 1327.543, 1353.863, 1414.509,
        1425.208, 1421.384, 1442.962, 1464.350, 1468.705, 1447.894, 1457.628
    };
    private static final double[] RAT43_Y = {
        16.08, 33.83, 65.80, 97.20, 191.55, 326.20, 386.87, 520.53, 590.03, 651.92, 724.93, 699.56,
        689.96, 637.56, 717.41
    };
    private static final double[] MGH09_X = {
        4, 2, 1, 0.5, 0.25, 0.167, 0.125, 0.1, 0.0833, 0.0714, 0.0625
    };
    private static final double[] MGH09_Y = {
        0.1957, 0.1947, 0.1735, 0.16, 0.0844, 0.0627, 0.0456, 0.0342, 0.0323, 0.0235, 0.0246
    };

    static Stream<Arguments> sets() throws IOException {
        return Stream.of(
                Arguments.of("Misra1a", misra1a(), (Curve) NistNonlinearTest::misra1aAt),
                Arguments.of("Thurber", thurber(), (Curve) NistNonlinearTest::cubicsAt),
                Arguments.of("Rat43", rat43(), (Curve) NistNonlinearTest::rat43At),
                Arguments.of("MGH09", mgh09(), (Curve) NistNonlinearTest::mgh09At),
                Arguments.of(
                        "Kirby2", NistReference.of("Kirby2"), (Curve) NistNonlinearTest::squaresAt),
                Arguments.of(
                        "Hahn1", NistReference.of("Hahn1"), (Curve) NistNonlinearTest::cubicsAt),
                Arguments.of(
                        "MGH17",
                        NistReference.of("MGH17"),
                        (Curve) NistNonlinearTest::exponentialsAt));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sets")
    void a_fit_without_priors_reaches_the_certified_values(
            String name, NistReference set, Curve curve) {
        // From the second of the two published starts, the one near the solution.
        FitResult fit = fit(set, set.nearStart(), curve);

        for (int j = 0; j < set.certified().length; j++) {
            double certified = set.certified()[j];
            assertThat(fit.parameter(j))
                    .as("b%d", j + 1)
                    .isCloseTo(certified, within(Math.abs(certified) * 1e-6));
            assertThat(fit.error(j))
                    .as("standard deviation of b%d", j + 1)
                    .isCloseTo(set.deviations()[j], within(set.deviations()[j] * 1e-5));
        }
        assertThat(squares(fit, set)).isCloseTo(set.squares(), within(set.squares() * 1e-9));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sets")
    void the_far_start_leads_to_the_certified_residuals_too(
            String name, NistReference set, Curve curve) {
        FitResult fit = fit(set, set.farStart(), curve);

        assertThat(squares(fit, set)).isCloseTo(set.squares(), within(set.squares() * 1e-9));
    }

    private static FitResult fit(NistReference set, double[] start, Curve curve) {
        Prior[] priors = Arrays.stream(start).mapToObj(Prior::none).toArray(Prior[]::new);
        Equations equations = new CurveEquations(set.x(), set.y(), start.length, curve);
        return new RobustFit(equations, priors, 1e-12, Scatter.UNKNOWN).fit(Loss.SQUARES);
    }

    private static double squares(FitResult fit, NistReference set) {
        double sum = 0;
        for (int i = 0; i < set.x().length; i++) {
            sum += fit.residual(i) * fit.residual(i);
        }
        return sum;
    }

    private static double misra1aAt(double x, double[] b) {
        return b[0] * (1 - Math.exp(-b[1] * x));
    }

    /** Hahn1 and Thurber are of one form. */
    private static double cubicsAt(double x, double[] b) {
        return (b[0] + x * (b[1] + x * (b[2] + x * b[3])))
                / (1 + x * (b[4] + x * (b[5] + x * b[6])));
    }

    private static double squaresAt(double x, double[] b) {
        return (b[0] + x * (b[1] + x * b[2])) / (1 + x * (b[3] + x * b[4]));
    }

    private static double rat43At(double x, double[] b) {
        return b[0] / Math.pow(1 + Math.exp(b[1] - b[2] * x), 1 / b[3]);
    }

    private static double mgh09At(double x, double[] b) {
        return b[0] * (x * x + x * b[1]) / (x * x + x * b[2] + b[3]);
    }

    private static double exponentialsAt(double x, double[] b) {
        return b[0] + b[1] * Math.exp(-x * b[3]) + b[2] * Math.exp(-x * b[4]);
    }

    private static NistReference misra1a() {
        return new NistReference(
                MISRA_X,
                MISRA_Y,
                new double[] {500, 0.0001},
                new double[] {250, 0.0005},
                new double[] {2.3894212918E+02, 5.5015643181E-04},
                new double[] {2.7070075241E+00, 7.2668688436E-06},
                1.2455138894E-01);
    }

    private static NistReference thurber() {
        return new NistReference(
                THURBER_X,
                THURBER_Y,
                new double[] {1000, 1000, 400, 40, 0.7, 0.3, 0.03},
                new double[] {1300, 1500, 500, 75, 1, 0.4, 0.05},
                new double[] {
                    1.2881396800E+03,
                    1.4910792535E+03,
                    5.8323836877E+02,
                    7.5416644291E+01,
                    9.6629502864E-01,
                    3.9797285797E-01,
                    4.9727297349E-02
                },
                new double[] {
                    4.6647963344E+00,
                    3.9571156086E+01,
                    2.8698696102E+01,
                    5.5675370270E+00,
                    3.1333340687E-02,
                    1.4984928198E-02,
                    6.5842344623E-03
                },
                5.6427082397E+03);
    }

    private static NistReference rat43() {
        double[] x = new double[RAT43_Y.length];
        Arrays.setAll(x, i -> i + 1);
        return new NistReference(
                x,
                RAT43_Y,
                new double[] {100, 10, 1, 1},
                new double[] {700, 5, 0.75, 1.3},
                new double[] {
                    6.9964151270E+02, 5.2771253025E+00, 7.5962938329E-01, 1.2792483859E+00
                },
                new double[] {
                    1.6302297817E+01, 2.0828735829E+00, 1.9566123451E-01, 6.8761936385E-01
                },
                8.7864049080E+03);
    }

    private static NistReference mgh09() {
        return new NistReference(
                MGH09_X,
                MGH09_Y,
                new double[] {25, 39, 41.5, 39},
                new double[] {0.25, 0.39, 0.415, 0.39},
                new double[] {
                    1.9280693458E-01, 1.9128232873E-01, 1.2305650693E-01, 1.3606233068E-01
                },
                new double[] {
                    1.1435312227E-02, 1.9633220911E-01, 8.0842031232E-02, 9.0025542308E-02
                },
                3.0750560385E-04);
    }
}
