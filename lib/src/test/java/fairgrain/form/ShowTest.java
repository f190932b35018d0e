package fairgrain.form;

import org.junit.jupiter.api.Test;

class ShowTest {
    @Test
    void show() {
        System.out.println(new DesignForm().starter());
        System.out.println(new DesignForm().reference());
        System.out.println(new DesignForm().jsonSchema());
        StrictJson.read(new DesignForm().jsonSchema());
        System.out.println(String.join(
                "\n",
                Given.problems(
                        new DesignForm(),
                        Given.block(
                                "name",
                                "x",
                                "panels",
                                java.util.List.of(
                                        Given.in(
                                                "name",
                                                "left",
                                                "wood",
                                                "maple",
                                                "between stiles",
                                                "3000",
                                                "grove",
                                                Given.in("depth", "3")),
                                        Given.in(
                                                "wood",
                                                "lake ahs",
                                                "between stiles",
                                                "11",
                                                "5",
                                                "",
                                                "groove",
                                                Given.in("depth", "3", "dpth", "1")),
                                        Given.in(
                                                "name",
                                                "r",
                                                "wood",
                                                "",
                                                "between stiles",
                                                "11",
                                                "groove depth",
                                                "3/8",
                                                "moisture",
                                                "unknwon"))))));
    }
}
