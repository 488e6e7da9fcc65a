/** What can be bought: parts, offers and workloads, indexed, immutable. */
package rigbrief.catalogue;
