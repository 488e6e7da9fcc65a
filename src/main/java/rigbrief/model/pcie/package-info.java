/** PCI Express throughput, and the power that slots and auxiliary connectors give. */
package rigbrief.model.pcie;
