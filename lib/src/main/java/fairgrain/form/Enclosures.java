package fairgrain.form;

import java.io.Reader;

/** Gives the texts that an input names, such as the log of a hygrometer beside a design file. A form opens no file itself. */
@FunctionalInterface
public interface Enclosures {
    /** For input with which no other text comes. */
    Enclosures NONE = name -> {
        throw new IllegalArgumentException("the file '" + name + "' cannot be read: no files come with this input");
    };

    /**
     * A text by its name; whoever asked for it closes it.
     *
     * @throws IllegalArgumentException if there is none or it may not be read; the message goes to the maker
     */
    Reader open(String name);
}
