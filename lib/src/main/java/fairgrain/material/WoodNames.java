package fairgrain.material;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What a wood is called. Capitals, spaces and hyphens do not matter: "western red cedar" is western redcedar.
 *
 * @param common the name that means this wood and no other
 * @param scientific genus and species, several separated by semicolons
 * @param trade other names; several woods may share one
 */
public record WoodNames(String common, String scientific, List<String> trade) {
    public WoodNames {
        trade = List.copyOf(trade);
    }

    /** The common name, then the others. */
    List<String> all() {
        List<String> all = new ArrayList<>();
        all.add(common);
        all.addAll(trade);
        return all;
    }

    /** The letters of every name that means it, among others perhaps; a genus by itself counts for each of its species. */
    Set<String> letters() {
        Set<String> letters = new LinkedHashSet<>();
        all().forEach(name -> letters.add(letters(name)));
        for (String species : scientific.split(";", -1)) {
            letters.add(letters(species));
            letters.add(letters(species.strip().split(" ", -1)[0]));
        }
        letters.remove("");
        return letters;
    }

    /** Letters and digits only, in lower case. */
    static String letters(String words) {
        StringBuilder kept = new StringBuilder();
        words.toLowerCase(Locale.ROOT)
                .codePoints()
                .filter(Character::isLetterOrDigit)
                .forEach(kept::appendCodePoint);
        return kept.toString();
    }
}
