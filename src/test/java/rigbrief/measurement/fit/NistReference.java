package rigbrief.measurement.fit;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A dataset for non-linear regression out of the NIST Statistical Reference Datasets, as published:
 * lines {@code bN = start 1, start 2, certified value, certified standard deviation}, then the
 * residual sum of squares, then the observations, y before x.
 */
record NistReference(
        double[] x,
        double[] y,
        double[] farStart,
        double[] nearStart,
        double[] certified,
        double[] deviations,
        double squares) {

    /** A file that the test archive of a reference library brings. */
    static NistReference of(String name) throws IOException {
        String resource = "/org/apache/commons/math3/fitting/leastsquares/" + name + ".dat";
        try (InputStream in = NistReference.class.getResourceAsStream(resource);
                BufferedReader reader =
                        new BufferedReader(new InputStreamReader(in, StandardCharsets.US_ASCII))) {
            return read(reader.lines().toList());
        }
    }

    private static NistReference read(List<String> lines) {
        List<double[]> parameters = new ArrayList<>();
        List<double[]> rows = new ArrayList<>();
        double squares = Double.NaN;
        boolean data = false;
        for (String line : lines) {
            if (line.matches("\\s*b\\d+\\s*=.*")) {
                parameters.add(numbers(line.substring(line.indexOf('=') + 1)));
            } else if (line.startsWith("Residual Sum of Squares:")) {
                squares = numbers(line.substring(line.indexOf(':') + 1))[0];
            } else if (line.matches("Data:\\s+y\\s+x\\s*")) {
                data = true;
            } else if (data && !line.isBlank()) {
                rows.add(numbers(line));
            }
        }
        return new NistReference(
                column(rows, 1),
                column(rows, 0),
                column(parameters, 0),
                column(parameters, 1),
                column(parameters, 2),
                column(parameters, 3),
                squares);
    }

    private static double[] numbers(String line) {
        String[] words = line.strip().split("\\s+");
        double[] numbers = new double[words.length];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = Double.parseDouble(words[i]);
        }
        return numbers;
    }

    private static double[] column(List<double[]> rows, int column) {
        return rows.stream().mapToDouble(row -> row[column]).toArray();
    }
}
