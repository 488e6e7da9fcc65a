/**
 * Invented catalogues of any size whose statistics follow the sample's. Plain Java without a test
 * library, so that benchmarks can use it.
 */
package rigbrief.world;
