/** Memory and drive interfaces: rates, names, shapes and endurance. */
package rigbrief.model.memory;
