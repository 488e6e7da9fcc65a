package rigbrief.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A pocket calculator that knows nothing of the program: it reads an expression and works it out.
 */
public final class Calculator {
    private static final Pattern TOKEN = Pattern.compile("\\d+(\\.\\d+)?|[a-z]+\\d*|[-+/^(),]");

    private final List<String> tokens = new ArrayList<>();
    private int at;

    private Calculator(String expression) {
        Matcher matcher = TOKEN.matcher(expression);
        while (matcher.find()) {
            tokens.add(matcher.group());
        }
        if (!String.join("", tokens).equals(expression.replace(" ", ""))) {
            throw new IllegalArgumentException("not an expression: " + expression);
        }
    }

    public static double of(String expression) {
        Calculator calculator = new Calculator(expression);
        double value = calculator.sum();
        if (calculator.at < calculator.tokens.size()) {
            throw new IllegalArgumentException("left over in " + expression);
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (is("+") || is("-")) {
            value = tokens.get(at++).equals("+") ? value + product() : value - product();
        }
        return value;
    }

    private double product() {
        double value = signed();
        while (is("x") || is("/")) {
            value = tokens.get(at++).equals("x") ? value * signed() : value / signed();
        }
        return value;
    }

    private double signed() {
        if (is("-")) {
            at++;
            return -signed();
        }
        double value = atom();
        if (is("^")) {
            at++;
            return Math.pow(value, signed());
        }
        return value;
    }

    private double atom() {
        String token = tokens.get(at++);
        if (token.equals("(")) {
            double value = sum();
            take(")");
            return value;
        }
        return Character.isDigit(token.charAt(0)) ? Double.parseDouble(token) : function(token);
    }

    private double function(String name) {
        take("(");
        List<Double> values = new ArrayList<>(List.of(sum()));
        while (is(",")) {
            at++;
            values.add(sum());
        }
        take(")");
        double first = values.get(0);
        return switch (name) {
            case "min" -> values.stream().mapToDouble(each -> each).min().orElseThrow();
            case "max" -> values.stream().mapToDouble(each -> each).max().orElseThrow();
            case "sqrt" -> Math.sqrt(first);
            case "log10" -> Math.log10(first);
            case "exp" -> Math.exp(first);
            case "ln" -> Math.log(first);
            case "floor" -> Math.floor(first);
            case "ceil" -> Math.ceil(first);
            case "normal" -> normal(first);
            default -> throw new IllegalArgumentException("no key for " + name);
        };
    }

    /** Share of the normal distribution up to z, by Simpson's rule on its density. */
    private static double normal(double z) {
        double far = Math.max(-9, Math.min(9, z));
        int slices = 2_000;
        double width = far / slices;
        double sum = 0;
        for (int i = 0; i <= slices; i++) {
            double weight = i == 0 || i == slices ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * Math.exp(-(i * width) * (i * width) / 2);
        }
        return 0.5 + sum * width / 3 / Math.sqrt(2 * Math.PI);
    }

    private boolean is(String token) {
        return at < tokens.size() && tokens.get(at).equals(token);
    }

    private void take(String token) {
        if (!is(token)) {
            throw new IllegalArgumentException("expected " + token + " in " + tokens);
        }
        at++;
    }
}
