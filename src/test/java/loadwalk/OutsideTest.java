package loadwalk;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;

/** Holds that the faults from outside are made and judged without a line of Loadwalk. */
class OutsideTest {
  @Test
  void harness_knowsTheJdkJunitAndJacksonAlone() {
    classes()
        .should()
        .onlyDependOnClassesThat(
            resideInAnyPackage(
                "loadwalk.outside", "java..", "org.junit.jupiter..", "com.fasterxml.jackson.."))
        .check(new ClassFileImporter().importPackages("loadwalk.outside"));
  }
}
