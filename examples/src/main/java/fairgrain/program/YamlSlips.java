package fairgrain.program;

import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** What breaks the rules of YAML, said to a maker who knows no YAML. */
final class YamlSlips {
    private static final String COMMENT = "; a # behind a blank begins a comment: write text such as \"#8\" in quotes";

    private YamlSlips() {}

    /** The refusal of text that the parser could not read. */
    static RefusedText refused(MarkedYamlEngineException e, YamlLines lines) {
        String context = e.getContext() == null ? "" : e.getContext();
        String problem = e.getProblem() == null ? "" : e.getProblem();
        boolean opened = problem.contains("unexpected end of stream")
                || problem.contains("could not find expected ':'")
                || problem.contains("unexpected character found");
        Optional<Mark> where = opened && e.getContextMark().isPresent() ? e.getContextMark() : e.getProblemMark();
        int line = where.map(m -> m.getLine() + 1).orElse(1);
        int column = where.map(m -> m.getColumn() + 1).orElse(1);
        int from = e.getContextMark().map(m -> m.getLine() + 1).orElse(line);
        String here = lines.from(line, column);
        String sentence = sentence(context, problem, here, from);
        boolean swallowed = context.contains("flow") && lines.haveSwallowedValue(Math.min(from, line - 1), line);
        return new RefusedText(lines.place(line, column), sentence + (swallowed ? COMMENT : ""));
    }

    private static String sentence(String context, String problem, String here, int from) {
        if (problem.contains("cannot start any token")) {
            return here.startsWith("\t")
                    ? "a tab cannot stand here; YAML wants blanks"
                    : "text cannot begin with '" + here.substring(0, Math.min(1, here.length()))
                            + "' here; put it in quotes";
        }
        if (context.contains("scanning a quoted") || context.contains("scanning a double-quoted")) {
            return problem.contains("end of stream")
                    ? "the quote that begins here is not closed"
                    : "a \\ between double quotes begins a sign that does not exist; use single quotes, or write \\\\";
        }
        if (context.contains("scanning an alias")
                || context.contains("scanning an anchor")
                || context.contains("a tag")) {
            return special(context.contains("alias") ? "*" : context.contains("anchor") ? "&" : "!");
        }
        if (context.contains("scanning a block scalar")) {
            return "text cannot begin with '|' or '>' here; put it in quotes";
        }
        if (context.contains("flow node")) {
            return here.startsWith(":")
                    ? "no key stands before this ':'"
                    : "a value, a ',' or a closing bracket is missing before this";
        }
        if (context.contains("flow")) {
            return "a ',' or a closing bracket is missing before this; the bracket was opened on line " + from;
        }
        return outsideOfBrackets(problem, here);
    }

    private static String outsideOfBrackets(String problem, String here) {
        if (problem.contains("mapping values are not allowed") || problem.contains("found ':'")) {
            return "a ':' cannot stand here: put text that has a ':' in it in quotes, and each key on a line of its"
                    + " own";
        }
        if (problem.contains("could not find expected ':'")) {
            return "no ':' stands behind this key";
        }
        if (problem.contains("sequence entries are not allowed")) {
            return "a list cannot begin here: put each '-' on a line of its own below the key";
        }
        if (problem.contains("expected the node content")) {
            return "a value cannot begin with '" + here.substring(0, Math.min(1, here.length()))
                    + "'; put it in quotes";
        }
        if (problem.contains("found '<scalar>'") && !here.isEmpty()) {
            return "text stands behind a closing quote; put the whole in quotes of the other kind";
        }
        if (problem.contains("expected <block end>")) {
            return "this does not line up with the lines above: keys of one block begin below each other, and so do the"
                    + " '-' of one list";
        }
        if (problem.contains("<document start>")) {
            return "text stands outside of the document; take away lines that begin with '%', '---' or '...'";
        }
        return "this is no YAML: look for a missing ':', an open bracket or quote, or a line that begins in the wrong"
                + " column";
    }

    /** The refusal of what YAML gives a meaning that a design file has no use for. */
    static String special(String sign) {
        String name = sign.equals("*") ? "an alias" : sign.equals("&") ? "an anchor" : "a tag";
        return "'" + sign + "' begins " + name
                + " in YAML, which is not read here; write the value out, or put text in quotes";
    }
}
