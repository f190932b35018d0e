package fairgrain.evidence;

import fairgrain.finding.Citation;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A formula of the library: one static function of a formula class, or the whole class where it is solved as one.
 *
 * @param room its package
 * @param type its class
 * @param function name of the function; empty for the whole class
 * @param sources what the class cites, the first first
 */
record Formula(String room, Class<?> type, String function, List<Citation> sources) implements Comparable<Formula> {
    private static final Comparator<Formula> ORDER =
            Comparator.comparing(Formula::room).thenComparing(Formula::name);

    /** The formulas of a class that names its source. */
    static List<Formula> of(Class<?> type) {
        String room = type.getPackageName().replaceFirst("^fairgrain\\.", "");
        List<Citation> sources = citations(type);
        if (!hasOnlyFunctions(type)) {
            return List.of(new Formula(room, type, "", sources));
        }
        return functions(type).stream()
                .map(Method::getName)
                .distinct()
                .map(name -> new Formula(room, type, name, sources))
                .toList();
    }

    static boolean hasOnlyFunctions(Class<?> type) {
        Constructor<?>[] made = type.getDeclaredConstructors();
        return Modifier.isFinal(type.getModifiers())
                && made.length == 1
                && Modifier.isPrivate(made[0].getModifiers())
                && made[0].getParameterCount() == 0
                && !functions(type).isEmpty();
    }

    static List<Method> functions(Class<?> type) {
        return Arrays.stream(type.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()) && Modifier.isStatic(method.getModifiers()))
                .filter(method -> !method.isSynthetic())
                .sorted(Comparator.comparing(Method::getName))
                .toList();
    }

    /** The citations of a class, whoever may see them, in the order in which they stand. */
    static List<Citation> citations(Class<?> type) {
        List<Citation> found = new ArrayList<>();
        for (Field field : type.getDeclaredFields()) {
            if (field.getType() == Citation.class && Modifier.isStatic(field.getModifiers())) {
                try {
                    field.setAccessible(true);
                    found.add((Citation) field.get(null));
                } catch (IllegalAccessException e) {
                    throw new IllegalStateException(field.toString(), e);
                }
            }
        }
        return found;
    }

    String name() {
        return type.getSimpleName() + (function.isEmpty() ? "" : "." + function);
    }

    boolean isNamedIn(String code) {
        if (!code.contains(type.getSimpleName())) {
            return false;
        }
        String simple = "(?<!\\w)" + type.getSimpleName() + "\\b";
        return Pattern.compile(function.isEmpty() ? simple : simple + "\\s*(?:\\.|::)\\s*" + function + "\\b")
                .matcher(code)
                .find();
    }

    @Override
    public int compareTo(Formula other) {
        return ORDER.compare(this, other);
    }
}
