package fairgrain.form;

import fairgrain.quantity.ShopRule;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** One reading of one input: what a bare length means, everything found wrong so far, and everything taken for granted. */
public final class Reading {
    private static final List<String> VERBS = List.of("must ", "needs ", "has ");

    /** Nobody mends more at a time; and an input made to be full of them would take long. */
    private static final int MOST_PROBLEMS = 500;

    private final List<Problem> problems = new ArrayList<>();
    private final List<Taken> taken = new ArrayList<>();
    private final Deque<Spot> spots = new ArrayDeque<>();
    private final Enclosures enclosures;
    private ShopRule rule;

    /** Where the reading has come to: the part, as the maker calls it, and the keys below it. */
    private record Spot(String part, String keys) {}

    public Reading(ShopRule rule) {
        this(rule, Enclosures.NONE);
    }

    /** The reading of an input that comes with other texts. */
    public Reading(ShopRule rule, Enclosures enclosures) {
        this.rule = rule;
        this.enclosures = enclosures;
        spots.push(new Spot("", ""));
    }

    /** How the shop of this input measures. */
    public ShopRule rule() {
        return rule;
    }

    /** The texts that come with this input. */
    Enclosures enclosures() {
        return enclosures;
    }

    /** From here on the input is read as this shop means it. */
    public void measureBy(ShopRule shop) {
        this.rule = shop;
    }

    /** The part being read, as the maker calls it; empty outside of all parts. */
    public String part() {
        return spot().part();
    }

    /** The keys from the part to here, such as {@code groove depth}; empty at the part itself. */
    public String keys() {
        return spot().keys();
    }

    /** Refuses what stands here. A message that begins with its verb ("must be ...") goes on from the keys. */
    public void refuse(Node node, String message) {
        refuse(node.at(), keys(), message);
    }

    /** Refuses a block, which is called by its keys, by its part, or else by the given name. */
    void refuseBlock(Node node, String name, String message) {
        if (keys().isEmpty() && !part().isEmpty() && verbFirst(message)) {
            problems.add(new Problem(node.at(), part() + " " + message));
        } else {
            refuse(node.at(), keys().isEmpty() && part().isEmpty() ? name : keys(), message);
        }
    }

    private void refuse(String at, String subject, String message) {
        report(at, subject.isEmpty() ? message : subject + (verbFirst(message) ? " " : ": ") + message);
    }

    private static boolean verbFirst(String message) {
        return VERBS.stream().anyMatch(message::startsWith);
    }

    /** A whole sentence about what stands somewhere in this part. */
    public void report(String at, String sentence) {
        problems.add(new Problem(at, part().isEmpty() ? sentence : part() + ": " + sentence));
    }

    /** What was taken for the key being read, which was left out. */
    public void take(String value, String why) {
        taken.add(new Taken(part(), keys(), value, why));
    }

    /** Everything found wrong, in the order in which it stands in the input. */
    public List<Problem> problems() {
        List<Problem> inOrder = new ArrayList<>(Place.inOrder(problems));
        if (isFull()) {
            String at = inOrder.get(inOrder.size() - 1).at();
            inOrder.add(new Problem(at, "more may be wrong: with so many faults the rest was not read"));
        }
        return List.copyOf(inOrder);
    }

    /** Whether so much is wrong that nothing more needs to be read. */
    boolean isFull() {
        return problems.size() >= MOST_PROBLEMS;
    }

    public boolean isClean() {
        return problems.isEmpty();
    }

    int count() {
        return problems.size();
    }

    public List<Taken> taken() {
        return List.copyOf(taken);
    }

    void enterKey(String key) {
        spots.push(new Spot(part(), keys().isEmpty() ? key : keys() + " " + key));
    }

    void enterPart(String name) {
        spots.push(new Spot(part().isEmpty() ? name : part() + ", " + name, ""));
    }

    void leave() {
        spots.pop();
    }

    private Spot spot() {
        return spots.element();
    }
}
