package fairgrain.program;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;

/**
 * Bad inputs made of good ones: bytes changed, cut out, doubled, put in from elsewhere, numbers and lines exchanged. Each has a
 * number, from which it can be made again.
 */
final class BadInputs {
    /** Much longer inputs are made by tests of their own; here they would only be slow. */
    private static final int LONGEST = 1 << 16;

    private static final int MOST_CHANGES = 6;

    /** What has a meaning to some reader, and what has none to any. */
    private static final List<byte[]> PIECES = List.of(
            bytes("½"),
            bytes("⅞ in"),
            bytes("1 1/2"),
            bytes("-"),
            bytes("−"),
            bytes("/"),
            bytes("0/0"),
            bytes("1/0"),
            bytes("3/4"),
            bytes("999999999"),
            bytes("123456789012345678901234567890"),
            bytes("1e309"),
            bytes("NaN"),
            bytes("Infinity"),
            bytes("-0"),
            bytes("0.000000001"),
            bytes(" ft "),
            bytes("'"),
            bytes("\""),
            bytes("\"\""),
            bytes(" mm"),
            bytes(" kg"),
            bytes(" %"),
            bytes(" °F"),
            bytes(","),
            bytes(";"),
            bytes(":"),
            bytes(": "),
            bytes("- "),
            bytes("? "),
            bytes("#"),
            bytes(" # "),
            bytes("&a "),
            bytes("*a"),
            bytes("!!int "),
            bytes("!<"),
            bytes("{"),
            bytes("}"),
            bytes("["),
            bytes("]"),
            bytes("|\n"),
            bytes(">9\n"),
            bytes("%YAML 99999999999.9\n"),
            bytes("%TAG ! x\n"),
            bytes("---\n"),
            bytes("...\n"),
            bytes("\"\\U80000000\""),
            bytes("\"\\UFFFFFFFF\""),
            bytes("\"\\uD800\""),
            bytes("\"\\e[2J\""),
            bytes("\\x"),
            bytes("\n"),
            bytes("\r"),
            bytes("\r\n"),
            bytes("\t"),
            bytes("  "),
            bytes("\u00a0"),
            bytes("\u2028"),
            bytes("\u202e"),
            bytes("\uFEFF"),
            bytes("\uFFFD"),
            bytes("\u0085"),
            bytes("\u001b[2J"),
            bytes("\u0000"),
            bytes("😀"),
            bytes("ǅİßﬀ"),
            bytes("٣"),
            bytes("=1+1"),
            bytes("@"),
            bytes("unknown"),
            bytes("null"),
            bytes("yes"),
            bytes("no"),
            new byte[] {(byte) 0xED, (byte) 0xA0, (byte) 0x80}, // half of a pair
            new byte[] {(byte) 0xC0, (byte) 0x80}, // an overlong zero
            new byte[] {(byte) 0xFF, (byte) 0xFE},
            new byte[] {(byte) 0xE4});

    private final List<byte[]> good;

    BadInputs(List<byte[]> good) {
        this.good = List.copyOf(good);
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** The input of a number: always the same. */
    byte[] of(long number) {
        SplittableRandom random = new SplittableRandom(number);
        if (random.nextInt(50) == 0) {
            return noise(random);
        }
        byte[] input = oneOf(good, random);
        if (random.nextInt(3) == 0) {
            return withNumbersNearby(input, random);
        }
        int changes = 1 + random.nextInt(MOST_CHANGES);
        for (int i = 0; i < changes && input.length <= LONGEST; i++) {
            input = changed(input, random);
        }
        return input;
    }

    private byte[] changed(byte[] input, SplittableRandom random) {
        if (input.length == 0) {
            return oneOf(PIECES, random);
        }
        int from = random.nextInt(input.length);
        int to = Math.min(input.length, from + 1 + random.nextInt(1 + random.nextInt(20)));
        return switch (random.nextInt(12)) {
            case 0 -> withBit(input, from, random);
            case 1 -> joined(input, from, to, new byte[0]);
            case 2, 3 -> joined(input, from, from, oneOf(PIECES, random));
            case 4 -> joined(input, from, to, oneOf(PIECES, random));
            case 5 -> joined(input, to, to, repeated(Arrays.copyOfRange(input, from, to), 1 + random.nextInt(20)));
            case 6 -> spliced(input, oneOf(good, random), random);
            case 7 -> Arrays.copyOf(input, from);
            case 8, 9 -> withOtherNumber(input, from, random);
            case 10 -> withoutALine(input, from);
            default -> withALineOfAnother(input, from, oneOf(good, random), random);
        };
    }

    private static byte[] noise(SplittableRandom random) {
        byte[] noise = new byte[random.nextInt(200)];
        random.nextBytes(noise);
        return noise;
    }

    private static byte[] withBit(byte[] input, int at, SplittableRandom random) {
        byte[] out = input.clone();
        out[at] ^= (byte) (1 << random.nextInt(8));
        return out;
    }

    /** What stands before one place and behind another, with something between. */
    private static byte[] joined(byte[] input, int from, int to, byte[] between) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(input.length + between.length);
        out.write(input, 0, from);
        out.writeBytes(between);
        out.write(input, to, input.length - to);
        return out.toByteArray();
    }

    private static byte[] repeated(byte[] piece, int times) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(piece.length * times);
        for (int i = 0; i < times; i++) {
            out.writeBytes(piece);
        }
        return out.toByteArray();
    }

    private static byte[] spliced(byte[] input, byte[] other, SplittableRandom random) {
        int from = random.nextInt(input.length);
        int to = random.nextInt(other.length + 1);
        return joined(input, from, input.length, Arrays.copyOfRange(other, to, other.length));
    }

    /** Sizes that could be meant: so that many inputs are read to their end, and what is reckoned of them is tried as well. */
    private static byte[] withNumbersNearby(byte[] input, SplittableRandom random) {
        byte[] out = input;
        int changes = 1 + random.nextInt(3);
        for (int i = 0; i < changes; i++) {
            int begin = next(out, random.nextInt(out.length), BadInputs::isDigit);
            int end = Math.min(begin + 6, next(out, begin, c -> !isDigit(c)));
            int number =
                    begin == end ? 1 : Integer.parseInt(new String(out, begin, end - begin, StandardCharsets.US_ASCII));
            int other = random.nextInt(3) == 0 ? random.nextInt(1 + 8 * number) : number + 1 - random.nextInt(3);
            out = joined(out, begin, end, bytes(Integer.toString(Math.max(0, other))));
        }
        return out;
    }

    private static byte[] withOtherNumber(byte[] input, int from, SplittableRandom random) {
        int begin = next(input, from, BadInputs::isDigit);
        int end = next(input, begin, c -> !isDigit(c));
        int number = random.nextInt(1 + (int) Math.pow(10, random.nextInt(5)));
        return joined(input, begin, end, bytes(Integer.toString(number)));
    }

    private static byte[] withoutALine(byte[] input, int from) {
        int begin = next(input, from, c -> c == '\n');
        int end = next(input, begin + 1, c -> c == '\n');
        return joined(input, Math.min(begin, end), end, new byte[0]);
    }

    private static byte[] withALineOfAnother(byte[] input, int from, byte[] other, SplittableRandom random) {
        int at = next(input, from, c -> c == '\n');
        int begin = next(other, random.nextInt(other.length + 1), c -> c == '\n');
        int end = next(other, begin + 1, c -> c == '\n');
        return joined(input, at, at, Arrays.copyOfRange(other, Math.min(begin, end), end));
    }

    private static boolean isDigit(byte c) {
        return c >= '0' && c <= '9';
    }

    private static int next(byte[] in, int from, Function<Byte, Boolean> wanted) {
        int at = Math.min(from, in.length);
        while (at < in.length && !wanted.apply(in[at])) {
            at++;
        }
        return at;
    }

    private static byte[] oneOf(List<byte[]> pieces, SplittableRandom random) {
        return pieces.get(random.nextInt(pieces.size()));
    }
}
