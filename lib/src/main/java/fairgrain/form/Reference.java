package fairgrain.form;

/** Writes the reference page: what each key means and what may stand there. */
final class Reference {
    private Reference() {}

    static String of(Form<?> root) {
        StringBuilder out = new StringBuilder();
        for (Form<?> form : Blocks.of(root)) {
            out.append(out.isEmpty() ? "" : "\n")
                    .append("## ")
                    .append(form.name())
                    .append("\n\n");
            out.append(form.help()).append("\n\n");
            out.append("| key | what it means | what may stand there | if left out |\n|---|---|---|---|\n");
            for (Field<?> field : form.fields()) {
                out.append("| `").append(field.key()).append("` | ");
                out.append(cell(field.help())).append(" | ");
                out.append(cell(field.kind().says())).append(" | ");
                out.append(cell(leftOut(field))).append(" |\n");
            }
        }
        return out.toString();
    }

    private static String leftOut(Field<?> field) {
        if (field.leftOut() instanceof LeftOut.Default<?> standard) {
            return standard.typed() + " is taken: " + standard.why();
        }
        if (field.leftOut() instanceof LeftOut.EmptyBlock<?>) {
            return "each of its keys is taken as said there";
        }
        return field.isRequired() ? "refused" : "there is none";
    }

    private static String cell(String text) {
        return text.replace("\\", "\\\\").replace("|", "\\|").replace("<", "&lt;");
    }
}
