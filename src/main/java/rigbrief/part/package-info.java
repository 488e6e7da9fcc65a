/** What a part is: one record per kind, facts as its maker states them. */
package rigbrief.part;
