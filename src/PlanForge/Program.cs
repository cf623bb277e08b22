using PlanForge;
using PlanForge.Folders;
using PlanForge.Terminals;

return (int)Application.Run(args, Terminal.OfProcess(), new Disk());
